# The compiled part. Its own names are for the package alone; what users see of it is typed in __init__.pyi.
from typing import Any

class BatchError(ValueError):
    line: int | None

def __getattr__(name: str) -> Any: ...
