"""The command line: wortmath card, demo, models, eval, check.

Whatever a command prints is made as a whole before the first letter of it is written, so that bad input leaves
standard output and files untouched. Exit status: 0, 2 for bad input, 3 with --strict where a caution is a stop.
"""

from __future__ import annotations

import argparse
import contextlib
import errno
import json
import os
import re
import sys
import tempfile
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, NoReturn

from ._units import nearest

if TYPE_CHECKING:
    from .batch import Forecast


class Refusal(Exception):
    """Bad input: a sentence for standard error; exit status 2."""


@dataclass
class Answer:
    """What a command has to say: for standard output, for files, and what to remark on standard error."""
    text: str = ""
    code: int = 0
    files: list[tuple[str, str | bytes]] = field(default_factory=list)
    remark: str = ""


FIRST = """\
wortmath: brewing mathematics, from published formulas

Three things to do first:

  wortmath demo                      see the card of an invented batch
  wortmath demo --write my.toml      save that batch, as a start for one of your own
  wortmath card my.toml              see the card of your batch

"""

OVERVIEW = FIRST + """\
The commands:

  card FILE               what to weigh, do and expect, step by step, and what to mind
  demo                    the same for the invented batch that comes along
  plan FILE               amounts that reach targets
  rescale FILE            the same batch for another kettle
  adjust [FILE]           a reading that is off, and what to do about it
  models [WORDS]          which formulas there are, for what, how well founded, by whom
  eval MODEL name=value   one formula, with units
  check TABLE --model M   a formula against a table of your own
  spread FILE             how sure the forecast is, and which amount decides that
  reconcile FILE          the readings of a real day: what does not fit, and why

  wortmath COMMAND --help says more about a command; wortmath --version which one this is.

Exit status: 0; 2 where the input is wrong; 3 with --strict where a caution says stop.
"""


# ------------------------------------------------------------------------------------------------ arguments

class _Parser(argparse.ArgumentParser):
    """argparse, with sentences for people."""

    def __init__(self, command: str, **more: Any) -> None:
        super().__init__(prog=f"wortmath {command}", allow_abbrev=False, formatter_class=argparse.RawDescriptionHelpFormatter, **more)
        self.command = command

    def error(self, message: str) -> NoReturn:
        raise Refusal(f"wortmath {self.command}: {self._sentence(message)}")

    def options(self) -> list[str]:
        return [o for a in self._actions for o in a.option_strings if o.startswith("--")]

    def _sentence(self, message: str) -> str:
        more = f"; wortmath {self.command} --help shows what is possible"
        if found := re.fullmatch(r"the following arguments are required: (.*)", message):
            first = found[1].split(",")[0].strip()
            what, example = {"FILE": ("a batch file", "card my.toml"), "MODEL": ("a model", "eval extract.from_gravity gravity=1.048"),
                              "TABLE.csv": ("a table", "check table.csv --model extract.from_gravity"), "--model": ("--model", "check table.csv --model extract.from_gravity")}.get(first, (first, f"{self.command} --help"))
            return f"{what} is missing, as in: wortmath {example}"
        if found := re.fullmatch(r"argument (?:-\w/)?(\S+?): expected one argument", message):
            return f"{found[1]} needs a value after it{more}"
        if found := re.fullmatch(r"argument (\S+?): ignored explicit argument '(.*)'", message):
            return f'{found[1]} takes no value, "{found[2]}" was given'
        if found := re.fullmatch(r"argument (\S+?): (.*)", message, re.DOTALL):
            return f"{found[1]}: {found[2]}"
        return message + more

    def read(self, arguments: list[str]) -> argparse.Namespace:
        """All arguments; what is too much is named, with the nearest option."""
        known, extra = self.parse_known_intermixed_args(arguments)
        for e in extra:
            if e.startswith("-") and e != "-":
                option = e.split("=", 1)[0]
                raise Refusal(f'wortmath {self.command}: there is no option "{option}"{nearest(option, self.options())}; wortmath {self.command} --help lists them')
            raise Refusal(f'wortmath {self.command}: "{e}" is one too many; wortmath {self.command} --help shows what is possible')
        return known


class _Help(argparse.Action):
    """--help as an answer like any other."""

    def __init__(self, option_strings: list[str], dest: str = argparse.SUPPRESS, **_: Any) -> None:
        super().__init__(option_strings, dest, nargs=0, help="show this text")

    def __call__(self, parser: argparse.ArgumentParser, namespace: argparse.Namespace, values: Any, option_string: str | None = None) -> None:
        raise _Shown(parser.format_help())


class _Shown(Exception):
    """Text that was asked for and ends the command."""


def _one_of(*words: str) -> Callable[[str], str]:
    def check(text: str) -> str:
        if text not in words:
            raise argparse.ArgumentTypeError(f'"{text}" is not known{nearest(text, list(words))}; it is {" or ".join(words)}')
        return text
    return check


def _clock(text: str) -> str:
    from ._words import parse_clock
    try:
        parse_clock(text)
    except ValueError as e:
        raise argparse.ArgumentTypeError(str(e)) from None
    return text.strip()


def _parser(command: str, description: str, epilog: str = "") -> _Parser:
    parser = _Parser(command, description=description, epilog=epilog, add_help=False)
    parser.add_argument("-h", "--help", action=_Help)
    return parser


def _card_options(parser: _Parser) -> None:
    parser.add_argument("--units", metavar="us|metric", type=_one_of("us", "metric"), help="show everything in these units; without it, in those of the file")
    parser.add_argument("--start", metavar="HH:MM", type=_clock, help="when the brewing day begins: the card then shows times of day")
    parser.add_argument("--html", metavar="FILE", help="also save the card as a page to print or to open in a browser; - writes the page to standard output instead of the card")
    parser.add_argument("--json", metavar="FILE", help="also save all numbers as JSON; - writes them to standard output instead of the card")
    parser.add_argument("--strict", action="store_true", help="end with exit status 3 if a caution of the batch says stop")


# ------------------------------------------------------------------------------------------------ card and demo

def _written(forecast: Forecast, options: argparse.Namespace, source: str) -> Answer:
    """The card in the forms asked for."""
    from . import _card, _words
    if options.json == "-" and options.html == "-":
        raise Refusal("--json - and --html - both want standard output; give one of them a file name")
    targets = [(name, path) for name, path in (("--json", options.json), ("--html", options.html)) if path not in (None, "-")]
    for name, path in targets:
        if path == "":
            raise Refusal(f"{name} needs a file name")
        if os.path.exists(path) and os.path.exists(source) and os.path.samefile(path, source):
            raise Refusal(f"{name}: {path} is the batch file itself; it would be lost")
    if len(targets) == 2 and os.path.realpath(targets[0][1]) == os.path.realpath(targets[1][1]):
        raise Refusal(f"--json and --html both name {targets[0][1]}; give them different names")

    answer = Answer(code=3 if options.strict and forecast.stops else 0)
    numbers = page = ""
    if options.json is not None:
        numbers = forecast.to_json() + "\n"
        if options.json != "-":
            answer.files.append((options.json, numbers))
    if options.html is not None:
        from . import _html
        page = _html.page(forecast, options.units, options.start)
        if options.html != "-":
            answer.files.append((options.html, page))
    if options.json == "-":
        answer.text = numbers if _can_print(numbers) else json.dumps(forecast.to_dict(), indent=2, allow_nan=False) + "\n"
    elif options.html == "-":
        answer.text = page
    else:
        answer.text = _card.text(forecast, options.units, None if options.start is None else _words.parse_clock(options.start))
        answer.remark = "".join(f"saved {path}\n" for path, _ in answer.files)
        if answer.code == 3:
            answer.remark += "stop: " + "; ".join(text for level, text in _words.tell(forecast, options.units).alerts if level == "stop") + "\n"
    return answer


def _forecast(path: str) -> Forecast:
    from . import batch
    try:
        return batch.read(path).forecast()
    except (ValueError, OSError) as e:
        raise Refusal(str(e)) from None


def card(arguments: list[str]) -> Answer:
    parser = _parser("card", "The card of a batch: what to weigh out, what to do at each step and what to expect then,\nwhat comes out by which formula, and what to mind.",
                     "The file is made with wortmath demo --write FILE and changed in any text editor.")
    parser.add_argument("file", metavar="FILE", help="a batch file, such as my.toml")
    _card_options(parser)
    options = parser.read(arguments)
    return _written(_forecast(options.file), options, options.file)


def demo(arguments: list[str]) -> Answer:
    from . import batch
    parser = _parser("demo", "The card of the batch that comes along. The batch is invented.")
    parser.add_argument("--write", metavar="FILE", help="save the batch as a start for one of your own, and show no card")
    parser.add_argument("--force", action="store_true", help="with --write: replace a file that is there already")
    _card_options(parser)
    options = parser.read(arguments)
    path = str(batch.demo_path())
    if options.write is None:
        if options.force:
            raise Refusal("wortmath demo: --force belongs to --write FILE")
        return _written(_forecast(path), options, path)
    clash = [f"--{name}" for name in ("units", "start", "html", "json", "strict") if getattr(options, name)]
    if clash:
        raise Refusal(f"wortmath demo: --write only saves the batch file; leave out {' and '.join(clash)} here, wortmath card takes it afterwards")
    text = batch.demo_path().read_text(encoding="utf-8")
    if options.write == "-":
        return Answer(text)
    if options.write == "":
        raise Refusal("--write needs a file name")
    if os.path.isdir(options.write):
        raise Refusal(f"{options.write} is a folder; give a file name, such as {os.path.join(options.write, 'my.toml')}")
    if os.path.lexists(options.write) and not options.force:
        raise Refusal(f"{options.write} is there already and was left as it is; choose another name, or add --force to replace it")
    return Answer(f"Saved {options.write}. Change it in any text editor, then: wortmath card {options.write}\n", files=[(options.write, text)])


def models(arguments: list[str]) -> Answer:
    from . import _ask
    parser = _parser("models", "Which formulas there are. Without words: the topics. With the name of a topic, a family or a model: all about it.\n"
                     "With other words: the questions that have to do with them.", "Examples:  wortmath models priming    wortmath models bottle pressure    wortmath models bitterness.utilisation")
    parser.add_argument("words", metavar="WORDS", nargs="*", help="a topic, family or model, or words to look for")
    parser.add_argument("--count", action="store_true", help="only count them")
    options = parser.read(arguments)
    return Answer(_ask.models(options.words, options.count))


def evaluate(arguments: list[str]) -> Answer:
    from . import _ask
    parser = _parser("eval", "Any formula of the library, with units. The name of a family stands for its default model.",
                     "Examples:\n  wortmath eval extract.from_gravity gravity=1.048\n  wortmath eval water.boiling_temperature pressure=\"12.2 psi\"\n"
                     "  wortmath eval bitterness.utilisation boil_gravity=1.050 boil_minutes=\"1 h\" --all\n"
                     "  wortmath eval extract.from_gravity gravity=1.030:1.090:0.010 --table\n"
                     "  wortmath eval bitterness.utilisation boil_gravity=1.040,1.060 boil_minutes=0:60:15 --table --csv")
    parser.add_argument("model", metavar="MODEL", help="a model or a family, such as extract.from_gravity; wortmath models lists them")
    parser.add_argument("values", metavar="name=value", nargs="*", help='the arguments, such as temperature="64 degF"; wortmath models MODEL lists them')
    parser.add_argument("--all", action="store_true", help="every model of the family, side by side, with range and evidence")
    parser.add_argument("--table", action="store_true", help="a table: values may be lists (1.030,1.050) or ranges with a step (1.030:1.090:0.010)")
    parser.add_argument("--csv", action="store_true", help="the table as comma-separated values, for a spreadsheet")
    parser.add_argument("--policy", metavar="raise|nan|extrapolate", type=_one_of("raise", "nan", "extrapolate"),
                        help="outside the range that was checked: refuse (raise; without --table the usual), leave blank (nan; with it), or compute it all the same (extrapolate)")
    options = parser.read(arguments)
    try:
        return Answer(_ask.evaluate(options.model, options.values, all_models=options.all, table=options.table or options.csv, as_csv=options.csv, policy=options.policy))
    except _ask.Question as e:
        raise Refusal(str(e)) from None


def check(arguments: list[str]) -> Answer:
    from . import _check
    parser = _parser("check", "A model against a table of your own: how far it is off, and where.",
                     "The first line of the table names its columns like the model's arguments, with their units:\n\n"
                     "  gravity, temperature [degF], volume [gal], plato\n\n"
                     "Lines that begin with # are remarks. Example:\n  wortmath check table.csv --model extract.from_gravity.asbc --compare plato --plot off.svg")
    _check.configure(parser)
    options = parser.read(arguments)
    try:
        text, files = _check.main(options)
    except _check.TableError as e:
        raise Refusal(str(e)) from None
    return Answer(text, files=files, remark="" if options.json == "-" else "".join(f"saved {path}\n" for path, _ in files))


def plan(arguments: list[str]) -> Answer:
    from . import _plan
    answer: Answer = _plan.plan_command(arguments)
    return answer


def rescale(arguments: list[str]) -> Answer:
    from . import _plan
    answer: Answer = _plan.rescale_command(arguments)
    return answer


def adjust(arguments: list[str]) -> Answer:
    from . import _adjust
    answer: Answer = _adjust.adjust_command(arguments)
    return answer


def _study(module: Any, command: str, description: str, epilog: str, arguments: list[str]) -> Answer:
    parser = _parser(command, description, epilog)
    module.configure(parser)
    options = parser.read(arguments)
    try:
        text, files = module.main(options)
    except (ValueError, OSError) as e:
        raise Refusal(str(e)) from None
    return Answer(text, files=files, remark="" if "-" in (options.json, options.html) else "".join(f"saved {path}\n" for path, _ in files))


def spread(arguments: list[str]) -> Answer:
    from . import _spread
    return _study(_spread, "spread", "How sure the forecast of a batch is, and which amount decides that.",
                  "Amounts of which the file says nothing in [[uncertain]] are taken for the usual instruments.", arguments)


def reconcile(arguments: list[str]) -> Answer:
    from . import _reconcile
    return _study(_reconcile, "reconcile", "The readings of a real day against its batch: which one does not fit, what probably\nhappened, and your own boil-off, efficiency and losses.",
                  "The readings stand in the file, each as [[reading]] with step, quantity and value.", arguments)


COMMANDS: dict[str, Callable[[list[str]], Answer]] = {"card": card, "demo": demo, "plan": plan, "rescale": rescale, "adjust": adjust, "models": models, "eval": evaluate, "check": check, "spread": spread, "reconcile": reconcile}


def _run(arguments: list[str]) -> Answer:
    from . import __version__
    if not arguments:
        return Answer(FIRST + "wortmath --help lists all commands.\n")
    first, rest = arguments[0], arguments[1:]
    if first in ("-h", "--help"):
        return Answer(OVERVIEW)
    if first == "--version":
        return Answer(f"wortmath {__version__}\n")
    if first in COMMANDS:
        return COMMANDS[first](rest)
    if first == "help":
        return COMMANDS[rest[0]](["--help"]) if rest and rest[0] in COMMANDS else Answer(OVERVIEW)
    if first.startswith("-"):
        raise Refusal(f'there is no option "{first}" here; options come after the command, and wortmath --help lists the commands')
    if os.path.exists(first) or first.endswith(".toml"):
        raise Refusal(f'"{first}" is no command; for the card of that file: wortmath card {first}')
    raise Refusal(f'there is no command "{first}"{nearest(first, list(COMMANDS))}; the commands are {", ".join(COMMANDS)}')


# ------------------------------------------------------------------------------------------------ writing

_REASONS = {errno.EACCES: "no permission", errno.EPERM: "no permission", errno.EROFS: "the disk takes no changes", errno.ENOSPC: "the disk is full", errno.EDQUOT: "your share of the disk is full",
            errno.ENAMETOOLONG: "the name is too long", errno.EISDIR: "it is a folder", errno.ENOTDIR: "a part of its path is a file, not a folder", errno.ENOENT: "its folder does not exist",
            errno.ELOOP: "it is a link that leads back to itself"}


def _reason(e: OSError) -> str:
    return _REASONS.get(e.errno or 0, (e.strerror or str(e)).lower())


def _save(files: list[tuple[str, str | bytes]]) -> None:
    """Write all files or none: each beside its place first, then all put in place."""
    waiting: list[tuple[str, str, str]] = []
    path = ""
    try:
        for path, content in files:
            data = content.encode() if isinstance(content, str) else content
            target = os.path.realpath(path)
            if os.path.isdir(target):
                raise Refusal(f"{path} cannot be written: it is a folder")
            if os.path.exists(target) and not os.path.isfile(target):
                with open(target, "wb") as out:   # a device or a pipe: nothing to put in place
                    out.write(data)
                continue
            if os.path.exists(target):
                if not os.access(target, os.W_OK):
                    raise Refusal(f"{path} cannot be written: no permission")
                mode = os.stat(target).st_mode & 0o7777
            else:
                mask = os.umask(0)
                os.umask(mask)
                mode = 0o666 & ~mask
            handle, temporary = tempfile.mkstemp(prefix=".wortmath-", dir=os.path.dirname(target))
            waiting.append((path, temporary, target))
            with os.fdopen(handle, "wb") as out:
                out.write(data)
            os.chmod(temporary, mode)
        while waiting:
            path, temporary, target = waiting[0]
            os.replace(temporary, target)
            waiting.pop(0)
    except (OSError, ValueError) as e:   # ValueError: a name with a null character
        raise Refusal(f"{path!r} cannot be a file name" if isinstance(e, ValueError) else f"{path} cannot be written: {_reason(e)}") from None
    finally:
        for _, temporary, _ in waiting:
            with contextlib.suppress(OSError):
                os.unlink(temporary)


def _can_print(text: str) -> bool:
    try:
        text.encode(getattr(sys.stdout, "encoding", None) or "utf-8")
    except UnicodeEncodeError:
        return False
    return True


def _forgiving(stream: Any) -> None:
    """A character that the terminal cannot show becomes a question mark, not a failure."""
    with contextlib.suppress(AttributeError, ValueError, OSError):
        stream.reconfigure(errors="replace")


def _silence(stream: Any) -> None:
    """Nobody reads any more: what Python still flushes when it ends goes nowhere, without a word."""
    with contextlib.suppress(AttributeError, ValueError, OSError):
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, stream.fileno())
        os.close(nowhere)


def _say(text: str) -> None:
    with contextlib.suppress(OSError, AttributeError):
        sys.stderr.write(text)
        sys.stderr.flush()


def main(argv: list[str] | None = None) -> int:
    _forgiving(sys.stdout)
    _forgiving(sys.stderr)
    code = 0
    try:
        try:
            answer = _run(list(sys.argv[1:] if argv is None else argv))
        except _Shown as shown:
            answer = Answer(str(shown))
        _save(answer.files)
        code = answer.code
        if sys.stdout is None:
            raise Refusal("standard output is closed: there is nowhere to print the answer")
        sys.stdout.write(answer.text)
        sys.stdout.flush()
        _say(answer.remark)
        return code
    except Refusal as e:
        _say(f"{e}\n")
        return 2
    except BrokenPipeError:
        _silence(sys.stdout)
        return code
    except OSError as e:
        _silence(sys.stdout)
        _say(f"the answer cannot be written: {_reason(e)}\n")
        return 2
    except KeyboardInterrupt:
        _silence(sys.stdout)
        return 130
