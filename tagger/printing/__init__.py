"""From spec to ink."""
