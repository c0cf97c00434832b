"""Makes the pictures of the README anew: python docs/make_pictures.py

The card comes from the project's own command, `wortmath demo --html`. Only this script needs Chromium (in the environment
variable CHROMIUM, or as chromium, chromium-browser or google-chrome on the path) and the extra `plot`.

    docs/pictures/card.png       the card of the bundled batch on a desk, and on a phone in the dark
    docs/pictures/pictures.png   its pictures
"""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).resolve().parent / "pictures"

# A frame takes the colour scheme of its element, so light and dark fit on one picture.
BOTH = """<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>both</title><style>
body{{margin:0;display:flex;gap:28px;padding:28px;background:#d9d4cb;height:{height}px;box-sizing:border-box}}
iframe{{border:0;height:100%;border-radius:6px}} .desk{{width:940px;color-scheme:light}} .phone{{width:372px;border-radius:22px;color-scheme:dark}}
</style></head><body><iframe class="desk" src="card.html" title="desk"></iframe><iframe class="phone" src="card.html" title="phone"></iframe></body></html>"""


def chromium() -> str:
    found = os.environ.get("CHROMIUM") or next((p for name in ("chromium", "chromium-browser", "google-chrome") if (p := shutil.which(name))), None)
    if found is None:
        sys.exit("Chromium is not on the path; install it, or name it in the environment variable CHROMIUM.")
    return found


def photograph(page: Path, picture: Path, width: int, height: int, profile: Path) -> None:
    subprocess.run([chromium(), "--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", f"--user-data-dir={profile}", "--allow-file-access-from-files",
                    f"--window-size={width},{height}", f"--screenshot={picture}", page.as_uri()], check=True, capture_output=True, timeout=120)
    print(f"{picture.name}: {picture.stat().st_size // 1024} kB")


def main() -> None:
    HERE.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        card, both, drawn = (Path(folder) / name for name in ("card.html", "both.html", "drawn.html"))
        subprocess.run([sys.executable, "-m", "wortmath", "demo", "--start", "09:00", "--html", str(card)], check=True, stdout=subprocess.DEVNULL)
        page = card.read_text(encoding="utf-8")
        both.write_text(BOTH.format(height=1400), encoding="utf-8")
        photograph(both, HERE / "card.png", 1396, 1400, Path(folder) / "profile")
        section = re.search(r'<section class="pictures">.*?</section>', page, re.S)
        head = page[:page.index("<body>")]
        if section is None or "<svg" not in section[0]:
            sys.exit("The card has no pictures: install the extra `plot`.")
        drawn.write_text(f"{head}<body style='padding:0'><main style='padding-top:1px'>{section[0]}</main></body></html>", encoding="utf-8")
        photograph(drawn, HERE / "pictures.png", 1000, 1130, Path(folder) / "profile")


if __name__ == "__main__":
    main()
