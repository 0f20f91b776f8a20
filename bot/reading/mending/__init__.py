"""How a message puts an earlier one right; `bot/reading/corrections.py` says which rule is tried when."""
