"""What a framer may type to change a project: forms that touch no widget, each giving an edit."""
