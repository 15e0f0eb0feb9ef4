#!/usr/bin/env python3
"""Saves the service's figures as SVG files, for a report or a slide.

    figures.py                                    the figure of every calculation, on its example
    figures.py endurance                          of one of them
    figures.py endurance=mine.json --theme dark   of your own request

It needs Python 3.8 or later and nothing else. The exit code is 0, or
    3   a request cannot be read, or the service refuses it: each fault is named
    4   the service cannot be reached, or is another one
"""
import argparse
import json
import os
import sys
from pathlib import Path
from urllib.error import HTTPError
from urllib.request import Request, urlopen

REFUSED, NO_SERVICE, NOT_ACCEPTABLE = 3, 4, 406
TIMEOUT_S = 30


def fetch(url, body=None):
    """The body of the answer, to GET or with a body to POST."""
    with urlopen(Request(url, body, {"Content-Type": "application/json"}), timeout=TIMEOUT_S) as answer:
        return answer.read()


def save_figure(url, calculation, body, theme, directory):
    """Draws one request, and says where the figure is; not every calculation has one."""
    try:
        figure = fetch(f"{url}/v1/{calculation}?as=svg&theme={theme}", body)
    except HTTPError as refusal:
        if refusal.code != NOT_ACCEPTABLE:
            raise
        print(f"{calculation} has no figure")
        return
    path = directory / f"{calculation}.svg"
    path.write_bytes(figure)
    print(path)


def main():
    options = argparse.ArgumentParser(description="Saves the service's figures as SVG files.")
    options.add_argument("calculations", nargs="*", metavar="CALCULATION[=REQUEST.json]", help="all unless given")
    options.add_argument("--theme", choices=["light", "dark", "auto"], default="light", help="light unless given")
    options.add_argument("--directory", type=Path, default=Path("."), help="where to save, here unless given")
    options.add_argument("--url", default=os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080"))
    given = options.parse_args()
    url = given.url.rstrip("/")
    try:
        named = given.calculations or [entry["name"] for entry in json.loads(fetch(url + "/v1"))["calculations"]]
        bodies = {}
        for calculation, _, file in (name.partition("=") for name in named):
            bodies[calculation] = Path(file).read_bytes() if file else fetch(f"{url}/v1/{calculation}/example")
        given.directory.mkdir(parents=True, exist_ok=True)
        for calculation, body in bodies.items():
            save_figure(url, calculation, body, given.theme, given.directory)
    except HTTPError as refusal:  # it is an OSError too, so it comes first
        print(f"{refusal.url}: {refusal.code} {refusal.reason}", file=sys.stderr)
        if refusal.headers.get_content_type() != "application/problem+json":
            return NO_SERVICE
        problem = json.loads(refusal.read())
        for fault in problem.get("errors", []):
            print(f"  {fault['at'] or 'the request'}: {fault['message']}", file=sys.stderr)
        return REFUSED if refusal.code < 500 else NO_SERVICE
    except (ValueError, KeyError, TypeError):
        print(f"what answers at {url} is not Trestle", file=sys.stderr)
        return NO_SERVICE
    except OSError as failure:
        is_file = getattr(failure, "filename", None)
        reason = failure.strerror if is_file else getattr(failure, "reason", failure)
        print(f"cannot {'use ' + str(is_file) if is_file else 'reach Trestle at ' + url}: {reason}", file=sys.stderr)
        return REFUSED if is_file else NO_SERVICE
    return 0


if __name__ == "__main__":
    sys.exit(main())
