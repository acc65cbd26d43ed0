"""The tenon: a tenon on a post's foot or head, and the mortise that receives it."""
