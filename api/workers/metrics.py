"""Counts and times for Prometheus, on an address of their own that only this machine reaches."""

from __future__ import annotations

from collections import Counter as Count
from collections.abc import Iterator

from prometheus_client import CollectorRegistry, Counter, Histogram, start_http_server
from prometheus_client.core import CounterMetricFamily, GaugeMetricFamily, Metric
from prometheus_client.registry import Collector

from tagger.store import OrderState, Store

_SECONDS = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10)
_METHODS = frozenset({"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE"})


class Metrics:
    """What is counted; ``start`` opens the address. Labels are few and known: room, method, class of status."""

    def __init__(self, store: Store) -> None:
        self.under_way: Count[str] = Count()
        self.sent_away: Count[str] = Count()
        self._registry = CollectorRegistry()
        self._requests = Counter(
            "tagger_requests", "Requests answered", ("room", "method", "status"), registry=self._registry
        )
        self._seconds = Histogram(
            "tagger_request_seconds",
            "Time to an answer",
            ("room",),
            buckets=_SECONDS,
            registry=self._registry,
        )
        self._registry.register(_Now(self, store))

    def told(self, room: str, method: str, status: int, seconds: float) -> None:
        """Counts one answer."""
        known = method if method in _METHODS else "other"
        self._requests.labels(room, known, f"{status // 100}xx").inc()
        self._seconds.labels(room).observe(seconds)

    def start(self, listen: str) -> None:
        """Serves them at ``listen``, host and port, until ``stop``."""
        host, _, port = listen.rpartition(":")
        self._server, self._thread = start_http_server(int(port), host.strip("[]"), self._registry)

    def stop(self) -> None:
        self._server.shutdown()
        self._server.server_close()
        self._thread.join(5)


class _Now(Collector):
    """What is looked up when somebody asks."""

    def __init__(self, metrics: Metrics, store: Store) -> None:
        self._metrics, self._store = metrics, store

    def describe(self) -> list[Metric]:
        return []  # nothing is asked of the database at the start

    def collect(self) -> Iterator[Metric]:
        under_way = GaugeMetricFamily("tagger_requests_under_way", "Requests under way", labels=["room"])
        away = CounterMetricFamily(
            "tagger_requests_sent_away", "Requests answered 503: too many", labels=["room"]
        )
        for room in ("scan", "bench", "api"):
            under_way.add_metric([room], self._metrics.under_way[room])
            away.add_metric([room], self._metrics.sent_away[room])
        yield under_way
        yield away
        yield GaugeMetricFamily("tagger_chain_links", "Links of the chain", value=self._store.head().links)
        waiting = self._store.count_orders(OrderState.RECEIVED)
        yield GaugeMetricFamily("tagger_orders_received", "Order requests nobody has answered", value=waiting)
