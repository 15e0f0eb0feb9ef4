#!/usr/bin/env python3
"""Has Trestle review a whole aircraft, and prints what a builder wants to know first.

    python3 review.py                          the example aircraft of the service
    python3 review.py mine.json                an aircraft of your own
    python3 review.py --checks mine.json       every check, also those that passed with room to spare
    python3 review.py --json > answer.json     everything that the service answered

It needs Python 3.8 or later and nothing else. The exit code tells a shell script or a CI job how
it went:

    0  fit          no finding above a note
    1  attention    a margin is thin, an input doubtful, or something was not judged
    2  stop         a limit is exceeded
    3  problem      the document cannot be read, or the service refuses it: each fault is named
    4  no service   it cannot be reached, or has no time now
    64              the command line is wrong
    141             whoever read the output went away (head, a pager)
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
CUT_SHORT = 141  # as a shell has it for a program whose reader went away

# A review takes well under a second; a service that says nothing for this long is not there.
TIMEOUT_S = 30

# Every field that has a dimension ends in its unit. The longest ending that fits is the unit, so
# that `_g_per_dm2` is not taken for `_dm2`.
UNITS = {
    "_g_per_dm2": "g/dm²",
    "_m_per_s2": "m/s²",
    "_m_per_s": "m/s",
    "_rpm_per_v": "rpm/V",
    "_wh_per_km": "Wh/km",
    "_wh_per_kg": "Wh/kg",
    "_w_per_kg": "W/kg",
    "_percent_mac": "% MAC",
    "_percent": "%",
    "_milliohm": "mΩ",
    "_kg_m2": "kg·m²",
    "_g_mm": "g·mm",
    "_n_m": "N·m",
    "_dm2": "dm²",
    "_mm2": "mm²",
    "_mm": "mm",
    "_km": "km",
    "_in": "in",
    "_wh": "Wh",
    "_ah": "Ah",
    "_rpm": "rpm",
    "_deg": "°",
    "_hpa": "hPa",
    "_mpa": "MPa",
    "_min": "min",
    "_ut": "µT",
    "_uf": "µF",
    "_uf": "µF",
    "_px": "px",
    "_g": "g",
    "_m": "m",
    "_h": "h",
    "_s": "s",
    "_w": "W",
    "_v": "V",
    "_a": "A",
    "_c": "°C",
    "_k": "K",
    "_n": "N",
    "_j": "J",
}

# Key figures that are called otherwise than their fields.
NAMES = {
    "total_mass_g": "take-off mass",
    "cg_arm_mm": "CG, aft of the datum",
    "launch_margin_percent": "launch margin over the stall",
    "endurance_h": "endurance in cruise",
    "ground_range_km": "ground range in cruise",
}

AID = "An aid, not an approval: local rules, makers' data and licensed practice come first."

# Of the checks that passed, those that keep less than this from their limit are printed without --checks, %.
THIN_PERCENT = 15


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
    """The document as it lies on the disk. The service reads it: it names faults better than this script can."""
    try:
        with open(path, "rb") as file:
            return file.read()
    except OSError as failure:
        raise Problem(f"cannot read {path}: {failure.strerror}") from None


# --- printing -------------------------------------------------------------------------------------


def print_review(review, every_check):
    print(f"Verdict: {review['verdict'].upper()}")
    print(AID)
    print_findings(review["findings"])
    print_checks(review["checks"], every_check)
    print_key_figures(review["key_figures"], review.get("bands", {}))
    print_estimates(review.get("estimates", []))
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


def print_checks(checks, every_check):
    """What was judged, and what was not: nothing that was not judged is said to be in order."""
    passed = [check for check in checks if check["outcome"] == "passed"]
    not_judged = [check for check in checks if check["outcome"] == "not_judged"]
    not_passed = [check for check in checks if check["outcome"] in ("attention", "stop")]
    print_heading(f"Checks: {len(passed)} passed, {len(not_passed)} not passed, {len(not_judged)} not judged")
    if not_passed:
        print("  Not passed")
        print_table([check_row(check) for check in not_passed], align="<><><", indent=4)
    if not_judged:
        print("  Not judged")
        wanting = {}
        for check in not_judged:
            wanting.setdefault(", ".join(check.get("give", [])) or "?", []).append(check["about"])
        for give, abouts in wanting.items():
            print_wrapped("    ", "; ".join(dict.fromkeys(abouts)))
            print(f"      give {give}")
    shown = passed if every_check else [check for check in passed if is_thin(check)]
    if shown:
        print("  Passed" if every_check else f"  Passed by less than {THIN_PERCENT} % of the limit")
        print_table([check_row(check) for check in shown], align="<><><", indent=4)
    if len(shown) < len(passed):
        print(f"  {len(passed) - len(shown)} more passed: --checks prints them too")


def is_thin(check):
    return 0 <= check.get("margin_percent", THIN_PERCENT) < THIN_PERCENT


def check_row(check):
    """What was judged, its number, the limit and where that is from, and the margin where it passed."""
    unit = check.get("unit", "")
    limit = check.get("limit")
    margin = check.get("margin_percent", -1)
    return [
        check["about"],
        measured(check.get("value"), unit),
        "" if limit is None else f"limit {measured(limit, unit)}",
        f"margin {number(margin)} %" if check["outcome"] == "passed" and margin >= 0 else "",
        "" if limit is None else f"({check['basis']})",
    ]


def measured(value, unit):
    return "" if value is None else f"{number(value)} {unit}".rstrip()


def print_key_figures(key_figures, bands):
    """Each with its band, where one rests on estimates; a figure that has no other place by the middle of its band."""
    print_heading("Key figures")
    middles = {field: band["p50"] for field, band in bands.items() if field not in key_figures}
    rows = []
    for field, value in {**key_figures, **middles}.items():
        quantity, unit = split_unit(field)
        row = [NAMES.get(field, quantity), number(value), unit]
        if bands:
            band = bands.get(field)
            row.append("" if band is None else f"{number(band['p10'])} to {number(band['p90'])}")
        rows.append(row)
    print_table(rows, align="<><<" if bands else "<><")


def print_estimates(estimates):
    """What was not told, what would narrow the bands most first."""
    if not estimates:
        return
    print_heading("Estimated: measure these first")
    rows = []
    for estimate in estimates:
        unit = estimate.get("unit", "")
        narrows = estimate.get("narrows_percent", 0)
        rows.append(
            [
                estimate["at"],
                f"{number(estimate['median'])} {unit}".rstrip(),
                f"{number(estimate['low'])} to {number(estimate['high'])}",
                f"narrows by {narrows:.0f} %" if narrows >= 1 else "",
            ]
        )
    print_table(rows, align="<><<")


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
    print_heading("Cautions")
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


def print_table(rows, align, indent=2):
    """Rows in columns; `align` has < or > for each column."""
    widths = [max(len(row[column]) for row in rows) for column in range(len(align))]
    for row in rows:
        cells = [f"{cell:{side}{width}}" for cell, side, width in zip(row, align, widths)]
        print((" " * indent + "  ".join(cells)).rstrip())


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
        "file", nargs="?", metavar="FILE", help="the aircraft; the service's example if not given"
    )
    parser.add_argument("--document", metavar="FILE", help="the same")
    parser.add_argument("--checks", action="store_true", help="print every check that passed")
    parser.add_argument("--json", action="store_true", help="print the whole answer as JSON")
    arguments = parser.parse_args()
    if arguments.file and arguments.document:
        parser.error("name one document")
    arguments.document = arguments.document or arguments.file
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
        print_review(review, arguments.checks)
    return EXIT_CODE_OF_VERDICT[review["verdict"]]


def main():
    # Not every terminal can write ² or Ω; a question mark is better than no review.
    for stream in (sys.stdout, sys.stderr):
        stream.reconfigure(errors="replace")
    try:
        code = review_as_asked(parse_arguments())
        sys.stdout.flush()
        return code
    except BrokenPipeError:
        # Whoever read (head, a pager) has seen enough. Nothing is left to be written at the exit.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return CUT_SHORT
    except Problem as problem:
        print(problem, file=sys.stderr)
        return PROBLEM
    except NoService as failure:
        print(failure, file=sys.stderr)
        return NO_SERVICE


if __name__ == "__main__":
    sys.exit(main())
