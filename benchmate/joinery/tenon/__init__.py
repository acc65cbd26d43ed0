"""The tenon on any end of a timber, and the mortise in the side that receives it."""
