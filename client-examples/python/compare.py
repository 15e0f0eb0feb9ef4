#!/usr/bin/env python3
"""Two aircraft side by side: what differs in their documents, and what that does to checks and figures.

    python3 compare.py before.json now.json            differences, checks that come out otherwise, key figures
    python3 compare.py --fields before.json now.json   and every other field of the reviews that differs

Parts of a list that have names are matched by their names, so an item put in among the others is one difference.
The service is at TRESTLE_URL, or http://127.0.0.1:8080. It needs Python 3.8 or later and nothing else.
Exit codes: that of the second aircraft's verdict, 0 fit, 1 attention, 2 stop; 3 a file or a field is wrong, 4 no service.
"""
import argparse
import json
import os
import sys
from http.client import HTTPException
from urllib.error import HTTPError
from urllib.request import Request, urlopen

URL = os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080").rstrip("/")
CODES = {"fit": 0, "attention": 1, "stop": 2}
PROBLEM, NO_SERVICE = 3, 4
TIMEOUT_S = 60
ABSENT = object()  # null is a value that a document can hold

# Parts of a review that are compared by themselves, or are words about the rest.
TOLD_APART = ["checks", "findings", "assumptions", "estimates", "cautions", "risks", "computed_by", "bands", "key_figures"]


class Problem(Exception):
    """A document is refused, or no document."""


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.error = lambda message: parser.exit(PROBLEM, f"{parser.prog}: {message}\n")
    parser.add_argument("before", metavar="BEFORE.json")
    parser.add_argument("now", metavar="NOW.json")
    parser.add_argument("--fields", action="store_true", help="list every field of the reviews that differs")
    return parser.parse_args()


def read(path):
    with open(path, encoding="utf-8-sig") as file:
        try:
            return json.load(file)
        except ValueError as wrong:
            raise Problem(f"{path}: not JSON: {wrong}") from None


def review(path, document):
    body = json.dumps(document).encode()
    try:
        request = Request(URL + "/v1/build-review", body, {"Content-Type": "application/json"})
        with urlopen(request, timeout=TIMEOUT_S) as answer:
            return json.load(answer)
    except HTTPError as refused:
        if refused.code == 429 or refused.code >= 500 or refused.headers.get_content_type() != "application/problem+json":
            raise
        problem = json.load(refused)
        faults = [f"  {it['at'] or 'the document'}: {it['message']}" for it in problem.get("errors", [])]
        raise Problem("\n".join([f"{path}: {problem['title']}"] + faults)) from None


def names_of(entries):
    """The names of a list's parts; none unless every part has its own."""
    names = [it.get("name") if isinstance(it, dict) else None for it in entries]
    return names if all(isinstance(it, str) for it in names) and len(set(names)) == len(names) else None


def children(before, now):
    """Pairs of parts that belong together, each with its step of the JSON Pointer."""
    if isinstance(before, dict):
        for name in list(before) + [name for name in now if name not in before]:
            yield name.replace("~", "~0").replace("/", "~1"), before.get(name, ABSENT), now.get(name, ABSENT)
        return
    were, are = names_of(before), names_of(now)
    if were is None or are is None:
        for index in range(max(len(before), len(now))):
            yield str(index), *(it[index] if index < len(it) else ABSENT for it in (before, now))
        return
    for index, name in enumerate(were):
        place = are.index(name) if name in are else None
        yield f"{index if place is None else place} ({name})", before[index], ABSENT if place is None else now[place]
    for index, name in enumerate(are):
        if name not in were:
            yield f"{index} ({name})", ABSENT, now[index]


def differences(before, now, at=""):
    """Every value that one has and the other has not, or has otherwise: where, before, now."""
    if isinstance(before, (dict, list)) and type(before) is type(now):
        for step, was, is_now in children(before, now):
            yield from differences(was, is_now, f"{at}/{step}")
    elif before is ABSENT or now is ABSENT or type(before) is not type(now) and not both_numbers(before, now) or before != now:
        yield at, before, now


def both_numbers(before, now):
    return all(isinstance(it, (int, float)) and not isinstance(it, bool) for it in (before, now))


def named(at, document):
    """A JSON Pointer with the names of parts of lists in place of their numbers, which may be others in the other document."""
    steps, here = [], document
    for step in at.split("/")[1:]:
        if isinstance(here, list):
            names = names_of(here)
            index = int(step) if step.isdigit() and int(step) < len(here) else None
            here = None if index is None else here[index]
            steps.append(step if index is None or names is None else f"({names[index]})")
        else:
            here = here.get(step.replace("~1", "/").replace("~0", "~")) if isinstance(here, dict) else None
            steps.append(step)
    return "".join("/" + step for step in steps)


def other_outcomes(before, now, documents):
    """Checks that came out otherwise, or that only one of the two has."""
    was, is_now = (
        {(it["code"], named(it["at"], document), it["about"]): it for it in checks}
        for checks, document in zip((before, now), documents)
    )
    for key in list(was) + [key for key in is_now if key not in was]:
        outcomes = [it[key]["outcome"] if key in it else "not there" for it in (was, is_now)]
        if outcomes[0] != outcomes[1]:
            yield key, outcomes


def shown(value):
    if value is ABSENT:
        return "not given"
    if isinstance(value, float):
        return f"{value:.4g}" if abs(value) < 1000 else f"{value:.0f}"
    text = value if isinstance(value, str) else json.dumps(value, ensure_ascii=False)
    return text if len(text) <= 60 else text[:59] + "…"


def print_differences(heading, found):
    print(f"\n{heading}: {len(found)}")
    for at, before, now in found:
        print(f"  {at or 'the document'}: {shown(before)} -> {shown(now)}")


def print_outcomes(before, now, documents):
    found = list(other_outcomes(before, now, documents))
    print(f"\nChecks that come out otherwise: {len(found)}")
    for (_, at, about), outcomes in found:
        print(f"  {about}{', ' + at if at else ''}: {' -> '.join(it.replace('_', ' ') for it in outcomes)}")


def print_figures(before, now):
    """Every key figure of either, its change, and the bands: where they overlap the change may be less than the doubt."""
    print("\nKey figures")
    were, are = before["key_figures"], now["key_figures"]
    for name in list(were) + [name for name in are if name not in were]:
        was, is_now = were.get(name, ABSENT), are.get(name, ABSENT)
        change = f"  {is_now - was:+.3g}" if both_numbers(was, is_now) and was != is_now else ""
        print(f"  {name:28}{shown(was):>10} -> {shown(is_now):10}{change}".rstrip())
    print("\nBands, eight of ten")
    for name in [it for it in before.get("bands", {}) if it in now.get("bands", {})]:
        was, is_now = before["bands"][name], now["bands"][name]
        apart = was["p90"] < is_now["p10"] or is_now["p90"] < was["p10"]
        both = " -> ".join(f"{shown(it['p10'])} to {shown(it['p90'])}" for it in (was, is_now))
        print(f"  {name:28}{both}{'  apart' if apart else ''}")


def compare(asked):
    documents = [read(path) for path in (asked.before, asked.now)]
    before, now = (review(path, it) for path, it in zip((asked.before, asked.now), documents))
    print(f"Verdict: {before['verdict']} -> {now['verdict']}")
    print_differences("Differences in the documents", list(differences(*documents)))
    print_outcomes(before["checks"], now["checks"], documents)
    print_figures(before, now)
    if asked.fields:
        rest = [{name: value for name, value in it.items() if name not in TOLD_APART} for it in (before, now)]
        print_differences("Other fields of the reviews that differ", list(differences(*rest)))
    print(f"\n{now['cautions'][0]}")
    return CODES[now["verdict"]]


def main():
    for stream in (sys.stdout, sys.stderr):
        stream.reconfigure(errors="replace")
    try:
        code = compare(arguments())
        sys.stdout.flush()
        return code
    except BrokenPipeError:  # whoever read has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 141
    except Problem as wrong:
        print(wrong, file=sys.stderr)
        return PROBLEM
    except HTTPError as failure:
        print(f"{failure.url}: {failure.code} {failure.reason}", file=sys.stderr)
        return NO_SERVICE
    except (HTTPException, ValueError, KeyError, TypeError) as wrong:
        print(f"what answers at {URL} is not this Trestle: {wrong}", file=sys.stderr)
        return NO_SERVICE
    except OSError as failure:
        if getattr(failure, "filename", None):
            print(f"cannot use {failure.filename}: {failure.strerror}", file=sys.stderr)
            return PROBLEM
        print(f"cannot reach Trestle at {URL}: {getattr(failure, 'reason', failure)}", file=sys.stderr)
        return NO_SERVICE


if __name__ == "__main__":
    sys.exit(main())
