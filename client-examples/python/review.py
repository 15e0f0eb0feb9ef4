#!/usr/bin/env python3
"""Has Trestle review a whole aircraft, and prints what a builder wants to know first.

    python3 review.py                          the example aircraft of the service
    python3 review.py --document mine.json     an aircraft of your own
    python3 review.py --json > answer.json     everything that the service answered

It needs Python 3.8 or later and nothing else. The exit code tells a shell script or a CI job how
it went:

    0  fit          no finding above a note
    1  attention    a margin is thin or an input doubtful
    2  stop         a limit is passed
    3  problem      the document cannot be read, or the service refuses it: each fault is named
    4  no service   it cannot be reached, or has no time now
    64              the command line is wrong
"""

import argparse
import json
import os
import shutil
import sys
import textwrap
from http.client import HTTPException
from urllib.error import HTTPError
from urllib.request import Request, urlopen

EXIT_CODE_OF_VERDICT = {"fit": 0, "attention": 1, "stop": 2}
PROBLEM = 3
NO_SERVICE = 4
USAGE = 64

# A review takes well under a second; a service that says nothing for this long is not there.
TIMEOUT_S = 30

# Every field that has a dimension ends in its unit. The longest ending that fits is the unit, so
# that `_g_per_dm2` is not taken for `_dm2`.
UNITS = {
    "_g_per_dm2": "g/dm²",
    "_m_per_s": "m/s",
    "_wh_per_km": "Wh/km",
    "_wh_per_kg": "Wh/kg",
    "_w_per_kg": "W/kg",
    "_percent": "%",
    "_milliohm": "mΩ",
    "_mm": "mm",
    "_km": "km",
    "_wh": "Wh",
    "_ah": "Ah",
    "_min": "min",
    "_g": "g",
    "_m": "m",
    "_h": "h",
    "_s": "s",
    "_w": "W",
    "_v": "V",
    "_a": "A",
    "_c": "°C",
}


class Problem(Exception):
    """The document is refused. The message has a line for each fault."""


class NoService(Exception):
    """The service cannot be reached or cannot answer now, or what answers is something else."""


# --- asking ---------------------------------------------------------------------------------------


def fetch_example(url):
    """The aircraft that the service brings along: a document to begin one's own from."""
    return exchange(Request(url + "/v1/build-review/example"))


def post_review(url, document):
    """The review of a document, which is JSON as bytes."""
    headers = {"Content-Type": "application/json", "Accept": "application/json"}
    body = exchange(Request(url + "/v1/build-review", document, headers))
    try:
        review = json.loads(body)
        EXIT_CODE_OF_VERDICT[review["verdict"]]
    except (ValueError, KeyError, TypeError):
        raise NoService(f"what answers at {url} is not Trestle, or a later one") from None
    return review


def exchange(request):
    """Sends a request and gives the body of the answer."""
    try:
        with urlopen(request, timeout=TIMEOUT_S) as answer:
            return answer.read()
    except HTTPError as refusal:  # it is an OSError too, so it comes first
        with refusal:
            raise failure_of(refusal) from None
    except (OSError, HTTPException) as failure:
        reason = getattr(failure, "reason", None) or failure
        raise NoService(f"cannot reach Trestle at {request.full_url}: {reason}") from None


def failure_of(refusal):
    """What a refusal means. Trestle explains each of them as problem details (RFC 9457)."""
    if refusal.headers.get_content_type() != "application/problem+json":
        answer = f"{refusal.code} {refusal.reason}"
        return NoService(f"what answers at {refusal.url} is not Trestle: {answer}")
    problem = json.loads(refusal.read())
    summary = f"{problem['title']} ({problem['status']}, {refusal.url})"
    # From 500 on the document is not to blame: the same one may pass in a moment.
    if refusal.code >= 500:
        return NoService(summary)
    return Problem("\n".join([summary] + faults_of(problem)))


def faults_of(problem):
    """A line for each fault, with the JSON Pointer to the field."""
    lines = [f"  {problem['detail']}"] if "detail" in problem else []
    for fault in problem.get("errors", []):
        # An empty pointer is the document as a whole.
        lines.append(f"  {fault['at'] or 'the document'}: {fault['message']}")
    return lines


def read_document(path):
    """The document as it lies on the disk. The service reads it: it names faults better than we."""
    try:
        with open(path, "rb") as file:
            return file.read()
    except OSError as failure:
        raise Problem(f"cannot read {path}: {failure.strerror}") from None


# --- printing -------------------------------------------------------------------------------------


def print_review(review):
    print(f"Verdict: {review['verdict'].upper()}")
    print_findings(review["findings"])
    print_key_figures(review["key_figures"])
    print_wires(review["wire_sizing"])
    print_legs(review["endurance"]["energy"])
    print_notes(review)


def print_findings(findings):
    print_heading("Findings")
    if not findings:
        print("  none")
    for finding in findings:
        print_wrapped(f"  {finding['severity']:<10} ", finding["message"])
        print(f"  {'':<10} at {finding['at'] or 'the document as a whole'}")


def print_key_figures(key_figures):
    print_heading("Key figures")
    rows = []
    for field, value in key_figures.items():
        quantity, unit = split_unit(field)
        rows.append([quantity, number(value), unit])
    print_table(rows, align="<><")


def print_wires(runs):
    print_heading("Wires")
    if not runs:
        print("  none")
        return
    rows = [["run", "gauge", "A", "peak A", "drop %", "°C", "peak °C", "loss W", "mass g", "fails"]]
    for run in runs:
        gauge = fitted_gauge(run)
        rows.append(
            [
                run["name"],
                run["gauge_fitted"] or "no gauge",
                number(run["current_a"]),
                number(run.get("peak_current_a")),
                number(gauge.get("drop_percent")),
                number(gauge.get("conductor_temperature_c")),
                number(gauge.get("peak_temperature_c")),
                number(gauge.get("loss_w")),
                number(gauge.get("mass_g")),
                " ".join(gauge.get("fails", [])),
            ]
        )
    print_table(rows, align="<>>>>>>>><")


def fitted_gauge(run):
    """How the fitted gauge does; empty where no gauge meets the limits and none was given."""
    answer = run["answer"]
    results = [answer.get("checked"), answer.get("recommended")] + answer["candidates"]
    fitted = [r for r in results if r and r["gauge"] == run["gauge_fitted"]]
    return fitted[0] if fitted else {}


def print_legs(energy):
    print_heading("Legs")
    if not energy["legs"]:
        print("  none asked")
        return
    rows = [["leg", "from min", "min", "m/s", "W", "Wh", "km", "lowest V", ""]]
    for leg in energy["legs"]:
        rows.append(
            [
                leg["kind"],
                number(leg["start_s"] / 60),
                number(leg["duration_s"] / 60),
                number(leg["airspeed_m_per_s"]),
                number(leg["power_w"]),
                number(leg["energy_wh"]),
                number(leg.get("distance_km")),
                number(leg.get("lowest_voltage_v")),
                "" if leg["completed"] else "NOT COMPLETED",
            ]
        )
    print_table(rows, align="<>>>>>>><")
    print(f"  {energy_line(energy)}")


def energy_line(energy):
    parts = [f"{number(energy['available_wh'])} Wh available"]
    parts.append(f"{number(energy['reserve_wh'])} Wh kept as reserve")
    if "legs_wh" in energy:
        parts.append(f"{number(energy['legs_wh'])} Wh for the legs")
    if "remaining_wh" in energy:
        remaining_wh = energy["remaining_wh"]
        what = "left above the reserve" if remaining_wh >= 0 else "MISSING to keep the reserve"
        parts.append(f"{number(abs(remaining_wh))} Wh {what}")
    return ", ".join(parts)


def print_notes(review):
    print_heading("Mind")
    for caution in review["cautions"]:
        print_wrapped("  - ", caution)
    count = len(review["assumptions"])
    version = review["computed_by"]["version"]
    print(f"\nTrestle {version} made {count} assumptions on the way; --json shows them all.")


def print_heading(heading):
    print(f"\n{heading}")


def print_wrapped(start, text):
    """Text that follows a start on its first line and is indented as far on the others."""
    width = max(60, shutil.get_terminal_size(fallback=(100, 24)).columns)
    indent = " " * len(start)
    print(textwrap.fill(start + text, width, subsequent_indent=indent, break_on_hyphens=False))


def print_table(rows, align):
    """Rows in columns; `align` has < or > for each column."""
    widths = [max(len(row[column]) for row in rows) for column in range(len(align))]
    for row in rows:
        cells = [f"{cell:{side}{width}}" for cell, side, width in zip(row, align, widths)]
        print(("  " + "  ".join(cells)).rstrip())


def split_unit(field):
    """The name of a field in words, and its unit: `total_mass_g` is `total mass` in `g`."""
    endings = [ending for ending in UNITS if field.endswith(ending)]
    ending = max(endings, key=len, default="")
    quantity = field[: len(field) - len(ending)]
    return quantity.replace("_", " "), UNITS.get(ending, "")


def number(value):
    """A number with as many digits as a builder can use; a dash for what is not known."""
    if value is None:
        return "-"
    if abs(value) >= 1000:
        return f"{value:.0f}"
    return f"{value:.1f}" if abs(value) >= 10 else f"{value:.2f}"


# --- the command line -----------------------------------------------------------------------------


class Parser(argparse.ArgumentParser):
    """argparse ends with 2 on a wrong option, which is `stop` here."""

    def error(self, message):
        self.print_usage(sys.stderr)
        self.exit(USAGE, f"{self.prog}: {message}\n")


def parse_arguments():
    what, rest = __doc__.split("\n", 1)
    parser = Parser(
        description=what, epilog=rest, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument(
        "--url",
        default=os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080"),
        help="where the service is; TRESTLE_URL; default %(default)s",
    )
    parser.add_argument(
        "--document", metavar="FILE", help="the aircraft; the service's example if not given"
    )
    parser.add_argument("--json", action="store_true", help="print the whole answer as JSON")
    arguments = parser.parse_args()
    arguments.url = arguments.url.rstrip("/")
    if not arguments.url.startswith(("http://", "https://")):
        parser.error(f"--url {arguments.url}: it must begin with http:// or https://")
    return arguments


def review_as_asked(arguments):
    """Prints the review and gives the exit code."""
    if arguments.document:
        document = read_document(arguments.document)
    else:
        document = fetch_example(arguments.url)
    review = post_review(arguments.url, document)
    if arguments.json:
        print(json.dumps(review, indent=2, ensure_ascii=False))
    else:
        print_review(review)
    return EXIT_CODE_OF_VERDICT[review["verdict"]]


def main():
    # Not every terminal can write ² or Ω; a question mark is better than no review.
    for stream in (sys.stdout, sys.stderr):
        stream.reconfigure(errors="replace")
    try:
        return review_as_asked(parse_arguments())
    except Problem as problem:
        print(problem, file=sys.stderr)
        return PROBLEM
    except NoService as failure:
        print(failure, file=sys.stderr)
        return NO_SERVICE


if __name__ == "__main__":
    sys.exit(main())
