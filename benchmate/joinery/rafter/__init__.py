"""Rafters: seats on plates, tails, and heads on a ridge or in one another."""
