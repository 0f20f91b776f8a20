"""The service, wired in one place: receive, handle, sweep, deliver, until told to stop."""

from __future__ import annotations

import asyncio
import contextlib
import os
import signal
from collections.abc import Callable, Coroutine
from concurrent.futures import ThreadPoolExecutor
from typing import Any, TypeVar

import structlog
from apscheduler.schedulers.asyncio import AsyncIOScheduler
from telegram import Bot
from telegram.error import InvalidToken, NetworkError, RetryAfter, TelegramError

from bot import garbage, metrics, schedule, web, worker
from bot.channels.telegram import (
    CHANNEL,
    KINDS,
    Receiver,
    Telegram,
    Unreadable,
    answer_press,
    make_bot,
    number_of,
    to_incoming,
)
from bot.clock import Clock, SystemClock
from bot.delivery import Delivery
from bot.logs import set_up_logs, why_away
from bot.settings import MissingSetting, Settings, unknown
from storage import erasure, inbox, outbox, retention
from storage.away import is_away
from storage.store import Store

log = structlog.get_logger(__name__)
T = TypeVar("T")

SWEEP_S = 10
COPIES_H = 12
SLICE = 50
IDLE_S = 1.0
TROUBLE_S = 2.0
GRACE_S = 10.0
THREADS_ON_POSTGRES = 8


def serve(settings: Settings) -> None:
    """Run until SIGTERM or SIGINT.

    Raises:
        MissingSetting: There is no token, or the service does not know it.
        WrongSetting: Nothing can be served at `listen`.
    """
    token = settings.token()
    set_up_logs(token, *([settings.webhook_secret.get_secret_value()] if settings.webhook_secret else []))
    for name, meant in unknown(os.environ):
        log.warning("no such setting", name=name, meant=meant)
    settings.home.mkdir(parents=True, exist_ok=True)
    store = Store.open(settings.database, settings.backups)
    garbage.look_seldom()
    try:
        asyncio.run(Service(settings, store, make_bot(token, settings.telegram_api_url), SystemClock()).run())
    finally:
        store.close()


class Service:
    """One process of the bot. Everything that waits for the database waits in a thread."""

    def __init__(self, settings: Settings, store: Store, bot: Bot, clock: Clock) -> None:
        self.settings, self.store, self.bot, self.clock = settings, store, bot, clock
        threads = 1 if settings.database.startswith("sqlite") else THREADS_ON_POSTGRES
        self._threads = ThreadPoolExecutor(threads, thread_name_prefix="store")
        self._stop = asyncio.Event()
        self._came_in = asyncio.Event()
        self.delivery = Delivery(
            store,
            Telegram(bot),
            clock,
            settings.messages_per_second,
            self.in_thread,
            alone=settings.replicas == 1,
        )

    async def in_thread(self, work: Callable[[], T]) -> T:
        return await asyncio.get_running_loop().run_in_executor(self._threads, work)

    async def run(self) -> None:
        loop = asyncio.get_running_loop()
        for name in (signal.SIGTERM, signal.SIGINT):
            # Not every system's loop hears signals, and none does outside the main thread: there, who started it calls
            # `stop`, or the interrupt ends the process as it would any other.
            with contextlib.suppress(NotImplementedError, ValueError, RuntimeError):
                loop.add_signal_handler(name, self.stop)
        if self.settings.database.startswith("sqlite"):
            await self.in_thread(self._take_over)
        try:
            await self._greet()
            if not self._stop.is_set():  # as it is where somebody stops what waits for a service that is away
                await self._work()
        finally:
            self._threads.shutdown(wait=True)
            with contextlib.suppress(TelegramError):
                await self.bot.shutdown()
        log.info("stopped")

    async def _work(self) -> None:
        """Everything at once, until told to stop."""
        http = web.server(self) if self.settings.listen else None
        # First of all: where another has the port, nothing is begun.
        door = web.door(self.settings) if http is not None else None
        scheduler = AsyncIOScheduler()
        # Late is better than never, once is enough, and never two at a time.
        scheduler.add_job(
            _until_stopped,
            "interval",
            [self._sweep],
            seconds=SWEEP_S,
            misfire_grace_time=None,
            coalesce=True,
            max_instances=1,
        )
        scheduler.add_job(
            _until_stopped,
            "interval",
            [self._let_go_of_copies],
            hours=COPIES_H,
            next_run_time=self.clock.now(),
            misfire_grace_time=None,
        )
        scheduler.start()
        await self._sweep()
        loops = [self._forever(self._handle), self._forever(self.delivery.step)]
        if self.settings.webhook_url is None:
            loops.append(self._forever(self._receive))
        if http is not None and door is not None:
            loops.append(http.serve([door]))
        tasks = [asyncio.create_task(one) for one in loops]
        log.info("serving", database=self.settings.database.split(":")[0], replicas=self.settings.replicas)
        await self._stop.wait()
        if http is not None:
            http.should_exit = True
        scheduler.shutdown(wait=False)
        # What is being sent is sent and marked: cut off in between, it would go out twice after the next start.
        try:
            await self.delivery.finish(GRACE_S)
        except Exception as error:
            _log_trouble("finish", error)
        for task in tasks:
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)

    def stop(self) -> None:
        self._stop.set()

    def _take_over(self) -> None:
        """On SQLite nobody else sends: what is claimed was claimed by a process that died."""
        with self.store.transaction() as tx:
            outbox.release(tx, CHANNEL)

    async def _greet(self) -> None:
        """Make sure of the token; a service that is away is waited for."""
        while not self._stop.is_set():
            try:
                await self.bot.initialize()
                await self._choose_way()
                return
            except InvalidToken as error:
                raise MissingSetting("The service does not know this SLOWRUNG_TELEGRAM_TOKEN.") from error
            except (NetworkError, RetryAfter) as error:
                log.warning("service away", error=type(error).__name__)
                await asyncio.sleep(TROUBLE_S)

    async def _choose_way(self) -> None:
        """Webhook where an address is given, else polling; what waits at the service is kept either way."""
        if self.settings.webhook_url is None:
            try:
                await self.bot.delete_webhook(drop_pending_updates=False)
            except TelegramError as error:
                # Only matters where a webhook was set before; then fetching says so itself.
                log.warning("webhook not deleted", error=type(error).__name__)
            return
        if self.settings.webhook_secret is None:
            raise MissingSetting("SLOWRUNG_WEBHOOK_SECRET is not set; the webhook would be open to anybody.")
        await self.bot.set_webhook(
            self.settings.webhook_url.rstrip("/") + web.WEBHOOK_PATH,
            allowed_updates=KINDS,
            secret_token=self.settings.webhook_secret.get_secret_value(),
        )

    async def _forever(self, step: Callable[[], Coroutine[Any, Any, None]]) -> None:
        """Repeat a step; trouble is waited out, never the end."""
        while not self._stop.is_set():
            try:
                await step()
            except asyncio.CancelledError:
                raise
            except (NetworkError, RetryAfter) as error:
                log.warning("service away", error=type(error).__name__)
                await asyncio.sleep(TROUBLE_S)
            except Exception as error:
                _log_trouble(step.__name__, error)
                await asyncio.sleep(TROUBLE_S)

    async def _receive(self) -> None:
        async for batch in Receiver(self.bot).batches():
            await self.accept(batch)

    async def accept(self, batch: list[Any]) -> None:
        """Keep a batch of updates, as the service's JSON has them, in one commit; only then may it be confirmed."""
        now = self.clock.now()
        said: list[inbox.IncomingUpdate] = []
        odd: list[tuple[int, str]] = []
        for update in batch:
            try:
                one = to_incoming(update, now)
            except Unreadable as error:
                metrics.REFUSED.labels("unreadable").inc()
                number = number_of(update)
                if number is None:
                    log.error("update without a number")
                else:
                    odd.append((number, str(error)))
            else:
                said += [] if one is None else [one]

        def keep() -> list[int | None]:
            with self.store.transaction() as tx:
                inbox.accept(tx, said, now)
                return [inbox.keep_aside(tx, CHANNEL, str(number), f"unreadable: {why}", now) for number, why in odd]

        if said or odd:
            for row_id in await self.in_thread(keep):
                if row_id is not None:
                    log.error("update set aside", incoming=row_id)
            self._came_in.set()
        for one in said:
            metrics.UPDATES.labels(one.kind).inc()
        for update in batch:
            await answer_press(self.bot, update)

    async def _handle(self) -> None:
        handled = await self.in_thread(lambda: worker.handle_next(self.store, self.clock.now()))
        if handled:
            self.delivery.owed.set()
        else:
            await _wait(self._came_in, IDLE_S)

    async def _sweep(self) -> None:
        """All that is due, a slice at a time: in between, what came in has its turn.

        A slice of which nothing could be taken ends it, however much is due: another replica is at work on that.
        """
        set_ = self.settings
        keep = retention.Keep(set_.keep_messages_days, set_.keep_done_days, set_.keep_codes_days)
        # However much the others have in their hands, something of it is free.
        slice_ = SLICE * self.settings.replicas
        more = True
        while more and not self._stop.is_set():
            try:
                swept = await self.in_thread(
                    lambda: schedule.sweep_and_beat(self.store, self.clock.now(), slice_, keep)
                )
            except Exception as error:
                _log_trouble("_sweep", error)
                return  # the next sweep begins with what is due then
            if swept:
                self.delivery.owed.set()
            more = swept > 0

    async def _let_go_of_copies(self) -> None:
        """What an erased athlete was promised is kept by the service, whether or not somebody makes new copies."""
        url, folder = self.settings.database, self.settings.backups
        gone = await self.in_thread(lambda: erasure.let_go_of_copies(url, {folder}, self.clock.now()))
        if gone:
            log.info("copies let go", count=len(gone))


def _log_trouble(step: str, error: Exception) -> None:
    if is_away(error):
        log.error("database away", why=why_away(error))
    else:
        log.error("step failed", step=step, error=type(error).__name__)


async def _until_stopped(job: Callable[[], Coroutine[Any, Any, None]]) -> None:
    """Run a job that the scheduler cuts off as it shuts down. That is no error to log: what a job does is transactions,
    and what was not done is due after the next start."""
    with contextlib.suppress(asyncio.CancelledError):
        await job()


async def _wait(event: asyncio.Event, most_s: float) -> None:
    with contextlib.suppress(TimeoutError):
        await asyncio.wait_for(event.wait(), most_s)
    event.clear()
