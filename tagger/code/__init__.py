"""What machines read: tag numbers, the payload, the link, the symbols."""
