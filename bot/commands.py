"""The command line. Each command imports what it needs, so that `--help` starts at once."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any, NoReturn

import typer
from typer.core import TyperGroup

from bot.troubles import in_a_line

if TYPE_CHECKING:
    from bot.settings import Settings
    from storage.persons import Athlete
    from storage.roster import Roster
    from storage.store import Store


class Commands(TyperGroup):
    """The commands, with one place for what any of them can meet."""

    def invoke(self, ctx: Any) -> Any:
        with in_a_line():
            return super().invoke(ctx)


app = typer.Typer(
    cls=Commands,
    help="Check-ins for athletes who train alone, and one weekly message for their strength coach.",
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
)
roster_app = typer.Typer(help="The coach's file of athletes.", no_args_is_help=True)
ladder_app = typer.Typer(help="Ladders: rungs, gates and proofs in a file.", no_args_is_help=True)
app.add_typer(roster_app, name="roster")
app.add_typer(ladder_app, name="ladder")

Handle = Annotated[str, typer.Argument(metavar="HANDLE", help="The athlete's handle.")]
CoachOfThem = Annotated[str | None, typer.Option(metavar="NAME", help="The coach's name, where there are several.")]
RosterFile = Annotated[Path, typer.Argument(metavar="FILE", help="A roster in TOML.")]


def _say_version(wanted: bool) -> None:
    if wanted:
        from importlib.metadata import version

        typer.echo(f"slowrung {version('slowrung')}")
        raise typer.Exit


@app.callback(help=app.info.help)
def slowrung(
    _version: Annotated[
        bool, typer.Option("--version", is_eager=True, callback=_say_version, help="Say which version this is.")
    ] = False,
) -> None:
    """What stands before a command."""


@app.command()
def chat(
    database: Annotated[str | None, typer.Option(help="Database URL; a demo of its own where left out.")] = None,
    roster: Annotated[
        Path | None, typer.Option(help="A roster in place of the demo's, put in as by `roster load`.")
    ] = None,
    fresh: Annotated[bool, typer.Option("--fresh", help="Throw the demo's data away and begin again.")] = False,
) -> None:
    """Talk with the bot in this terminal, as an athlete or as the coach."""
    from bot.channels.terminal import AnotherRoster, chat_here, clear_demo
    from bot.logs import log_beside

    log_beside()
    settings = _settings()
    if fresh and database is not None:
        _stop("--fresh throws away the demo's data, and --database names another database. Say one of them.")
    given = _read_roster(roster) if roster else None
    if fresh:
        clear_demo(settings)
    _own_ladders()
    try:
        chat_here(settings, database, given)
    except AnotherRoster as error:
        _stop(str(error))


@app.command()
def read() -> None:
    """Read messages: JSON lines in, readings as JSON lines out."""
    from bot.reading.command import run

    run()


@app.command()
def rehearse(
    roster: Annotated[Path | None, typer.Option(help="A roster in TOML; the demo's where left out.")] = None,
    database: Annotated[str | None, typer.Option(help="Keep the data there; in memory where left out.")] = None,
) -> None:
    """Live through weeks in seconds: JSON lines in and out, on a virtual clock."""
    from bot.channels.rehearsal import rehearse as live
    from bot.demo import demo_roster
    from bot.logs import log_beside
    from bot.streams import json_lines

    log_beside()
    given = _read_roster(roster) if roster else None
    make = (lambda _moment: given) if given else demo_roster if database is None else None
    with _opened("sqlite://" if database is None else database) as store:
        live(store, make, *json_lines())


@app.command()
def serve() -> None:
    """Run the Telegram bot. Settings come from the environment (SLOWRUNG_TELEGRAM_TOKEN and others)."""
    from bot.serve import serve as run_service
    from bot.settings import MissingSetting, WrongSetting

    settings = _settings()
    _own_ladders()
    try:
        run_service(settings)
    except (MissingSetting, WrongSetting) as error:
        _stop(str(error))


@roster_app.command("check")
def roster_check(file: RosterFile) -> None:
    """Say what is wrong with a roster, by line and key. Nothing is loaded."""
    found = _read_roster(file)
    typer.echo(f"{file.name}: {len(found.athletes)} athletes of {found.coach.name}, nothing wrong.")


@roster_app.command("load")
def roster_load(
    file: RosterFile,
    again: Annotated[
        list[str] | None,
        typer.Option(metavar="HANDLE", help="Take up an athlete who once had all their data deleted."),
    ] = None,
) -> None:
    """Put a roster into the database. Prints the coach's one-time code, to be sent to the bot as /start CODE."""
    from bot import joining
    from bot.clock import SystemClock

    found = _read_roster(file)
    settings = _settings()
    with _opened(settings.database, settings.backups) as store, store.transaction() as tx:
        typer.echo(joining.load(tx, found, SystemClock().now(), again or ()))


@ladder_app.command("check")
def ladder_check(file: Annotated[Path, typer.Argument(metavar="FILE", help="A ladder in TOML.")]) -> None:
    """Say what is wrong with a ladder, by line and key."""
    from planner import ladders

    problems = ladders.check(file)
    if problems:
        _stop("\n".join(problems))
    typer.echo(f"{file.name}: nothing wrong.")


@ladder_app.command("draw")
def ladder_draw(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="A ladder in TOML.")],
    to: Annotated[Path | None, typer.Option(help="The SVG picture; beside the ladder where left out.")] = None,
) -> None:
    """Draw a ladder's rungs and ways as an SVG picture."""
    from bot.ladder_picture import draw
    from planner import ladders

    problems = ladders.check(file)
    if problems:
        _stop("\n".join(problems))
    picture = to or file.with_suffix(".svg")
    if picture.suffix != ".svg" or picture == file:
        # A slip of the hand must not write over a ladder or a roster.
        _stop(f"{picture}: a picture's name ends in .svg and is not the ladder's own. Say --to FILE.svg.")
    picture.write_text(draw(ladders.load(file)), encoding="utf-8")
    typer.echo(str(picture))


@app.command(name="import")
def import_(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="Dated notes, or a table with --column.")],
    athlete: Annotated[str, typer.Option(metavar="HANDLE", help="The athlete's handle.")],
    coach: CoachOfThem = None,
    column: Annotated[
        list[str] | None, typer.Option(metavar="KIND=NAME", help="A table's column, such as date=Day; for each.")
    ] = None,
    month_first: Annotated[bool, typer.Option("--month-first", help="3/4 is March 4.")] = False,
    yes: Annotated[bool, typer.Option("--yes", help="Write it down; without this it is only shown.")] = False,
) -> None:
    """Show what old notes say, and with --yes write it down. Safe to run twice."""
    from bot.importing.command import ImportFailed, import_notes
    from bot.importing.table import BadColumns, columns_named

    with _with_people() as store:
        meant, _ = _meant(store, athlete, coach)
        try:
            columns = columns_named(column or [])
            typer.echo(import_notes(store, meant, file, columns, "MDY" if month_first else "DMY", yes))
        except (ImportFailed, BadColumns) as error:
            _stop(str(error))


@app.command()
def backup(
    to: Annotated[Path | None, typer.Option(help="Folder for the copies; in SLOWRUNG_HOME where left out.")] = None,
    keep: Annotated[int, typer.Option(min=1, help="How many copies are kept.")] = 14,
) -> None:
    """Copy the database while it is in use."""
    from bot.clock import SystemClock
    from storage.backup import backup as copy
    from storage.erasure import let_go_of_copies

    settings, now = _settings(), SystemClock().now()
    folder = to or settings.backups
    typer.echo(copy(settings.database, folder, now, keep))
    for old in let_go_of_copies(settings.database, {folder, settings.backups}, now):
        typer.echo(f"{old.name} was deleted: it knew somebody whose data was erased a month ago.", err=True)


@app.command()
def export(
    handle: Handle,
    to: Annotated[Path, typer.Option(metavar="FOLDER", help="Where the files go; made where it is not there.")],
    coach: CoachOfThem = None,
) -> None:
    """Write everything stored of an athlete into files, as they get them in the chat for “send me all my data”."""
    from bot.clock import SystemClock
    from bot.handing_over import AlreadyThere, write

    with _with_people() as store:
        meant, _ = _meant(store, handle, coach)
        assert meant.id is not None
        try:
            written = write(store, meant.id, to, SystemClock().now())
        except AlreadyThere as error:
            _stop(str(error))
    typer.echo("\n".join(map(str, written)))
    typer.echo("Hand them over and delete them here: an erasure does not reach them.", err=True)


@app.command()
def erase(
    handle: Handle,
    coach: CoachOfThem = None,
    yes: Annotated[bool, typer.Option("--yes", help="Erase; without this it is only shown who is meant.")] = False,
) -> None:
    """Erase an athlete who asked for it outside the chat. In the chat they can do so themselves."""
    from bot.clock import SystemClock
    from storage.erasure import erase_athlete

    with _with_people() as store:
        row, whose = _meant(store, handle, coach)
        assert row.id is not None
        if not yes:
            _stop(f"{row.name} of {whose}, since {row.started_on}. Nothing is erased yet: say --yes.")
        done = erase_athlete(store, row.id, SystemClock().now(), _settings().backups)
    typer.echo(f"{sum(done.rows.values())} rows erased. {len(done.copies)} copies still hold them, a month at most.")


@app.command()
def retry() -> None:
    """Try messages again that kept failing and were set aside, as after an upgrade that mends the reason."""
    from storage import inbox

    with _with_people() as store, store.transaction() as tx:
        count = inbox.retry(tx)
    typer.echo(f"{count} messages wait to be handled again; the service takes them up in their turn.")


@app.command()
def restore(copy: Annotated[Path, typer.Argument(help="A copy made by `backup`.")]) -> None:
    """Put a copy back in place of the SQLite database. Stop the service first."""
    from bot.clock import SystemClock
    from storage.erasure import restore_copy
    from storage.store import sqlite_path

    path = sqlite_path(_settings().database)
    if path is None:
        _stop("The database is not a SQLite file; PostgreSQL dumps go back with pg_restore.")
    done = restore_copy(copy, path, SystemClock().now())
    typer.echo(
        f"{path} is what {copy.name} holds." + (f" What was there is now {done.former.name}." if done.former else "")
    )
    if done.erased_again:
        typer.echo(f"{done.erased_again} athletes who had been erased since that copy were erased from it again.")
    if done.unsure:
        typer.echo("What was there could not be read: who was erased since that copy is not known, and is back.")


@app.command()
def move(
    source: Annotated[str, typer.Option("--from", metavar="URL", help="The database as it is; only read.")],
    target: Annotated[str, typer.Option("--to", metavar="URL", help="An empty database.")],
) -> None:
    """Move everything into another database, SQLite to PostgreSQL or back. Stop the service first.

    Every table is compared before it counts: where one differs, the target is left empty and the exit code is 1.
    """
    from bot.clock import SystemClock
    from bot.moving import as_table
    from storage.moving import CopyDiffers
    from storage.moving import move as move_all

    try:
        typer.echo(as_table(move_all(source, target, SystemClock().now())))
    except CopyDiffers as error:
        typer.echo(as_table(error.compared))
        typer.echo(str(error), err=True)
        raise typer.Exit(1) from error
    typer.echo("Now set SLOWRUNG_DATABASE_URL to the new database and start the service.")


@app.command()
def doctor() -> None:
    """Look at settings, database, clock and queues, and say in plain words what is wrong."""
    from bot.clock import SystemClock
    from bot.doctor import examine

    sound, findings = examine(_settings(), SystemClock().now())
    typer.echo("\n".join(findings))
    raise typer.Exit(0 if sound else 1)


def _settings() -> Settings:
    from bot.settings import WrongSetting, from_environment

    try:
        return from_environment()
    except WrongSetting as error:
        _stop(str(error))


def _own_ladders() -> None:
    """The coach's own ladders, from the folder `ladders` in SLOWRUNG_HOME. One that is wrong stops everything: whoever
    stands on it would get no plan."""
    from planner import ladders

    problems = ladders.add_own(_settings().home / "ladders")
    if problems:
        _stop("\n".join(problems))


@contextmanager
def _opened(url: str, backups: Path | None = None) -> Iterator[Store]:
    from storage.store import Store

    _own_ladders()
    store = Store.open(url, backups)
    try:
        yield store
    finally:
        store.close()


@contextmanager
def _with_people() -> Iterator[Store]:
    """The service's database, for what is about people who are in it. Where there is none, none is made: a wrong
    SLOWRUNG_HOME would look like an empty one."""
    from storage.errors import no_database_yet
    from storage.store import sqlite_path

    settings = _settings()
    path = sqlite_path(settings.database)
    if path is not None and not path.exists():
        _stop(no_database_yet(path))
    with _opened(settings.database, settings.backups) as store:
        yield store


def _meant(store: Store, handle: str, coach: str | None) -> tuple[Athlete, str]:
    """The one athlete of that handle, among those of the coach where one is named, and the coach's name."""
    from storage import persons

    with store.reading() as tx:
        coaches = [one for one in persons.all_coaches(tx) if coach in (None, one.name)]
        found = [(persons.athlete_by_handle(tx, one.id or 0, handle), one.name) for one in coaches]
    rows = [(row, name) for row, name in found if row is not None]
    if not rows:
        _stop(f"Nobody has the handle {handle!r}{f' with the coach {coach!r}' if coach else ''}.")
    if len(rows) > 1:
        _stop(f"{handle!r} is an athlete of {' and of '.join(name for _, name in rows)}: say --coach NAME.")
    return rows[0]


def _read_roster(file: Path) -> Roster:
    from bot.roster import RosterError, read_roster

    _own_ladders()
    try:
        return read_roster(file)
    except RosterError as error:
        _stop("\n".join(error.problems))


def _stop(sentence: str) -> NoReturn:
    typer.echo(sentence, err=True)
    raise typer.Exit(2)
