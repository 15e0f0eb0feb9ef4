#!/usr/bin/env python3
"""Has Trestle review a flight's log, and writes the calibration that the next estimate of endurance can take.

    python3 after_flight.py flight.csv --aircraft aircraft.json --calibration calibration.json
    python3 after_flight.py flight.csv --column current_a=Curr:0.001 --column time_s=TimeUS:0.000001
    python3 after_flight.py flight.csv --from 577 --to 840

The log is a CSV with a heading row and decimal points. `--column FIELD=HEADING[:FACTOR]` says which of its columns is which
field of the contract, and what its figures are multiplied by; a heading that is a field's name needs none. The file of
`--aircraft` holds the fields of `aircraft` (at least takeoff_mass_g), of `--pack` those of `pack`. The service is at
TRESTLE_URL, or http://127.0.0.1:8080. Exit codes: 0 fit, 1 attention, 2 stop, 3 a file or a field is wrong, 4 no service.
"""
import argparse
import csv
import json
import os
import sys
from urllib.error import HTTPError, URLError
from urllib.request import Request, urlopen

FIELDS = [
    "time_s", "voltage_v", "current_a", "charge_counter_ah", "airspeed_m_per_s", "ground_speed_m_per_s", "altitude_m",
    "latitude_deg", "longitude_deg", "track_deg", "velocity_north_m_per_s", "velocity_east_m_per_s",
]
MOST_BYTES = 1_000_000  # the service takes 1 MiB of JSON unless it was started with more
MOST_ROWS = 8_000  # as the contract has it
CODES = {"fit": 0, "attention": 1, "stop": 2}


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("log")
    parser.add_argument("--column", action="append", default=[], metavar="FIELD=HEADING[:FACTOR]")
    parser.add_argument("--aircraft", metavar="FILE")
    parser.add_argument("--pack", metavar="FILE")
    parser.add_argument("--from", dest="from_s", type=float, metavar="S")
    parser.add_argument("--to", dest="to_s", type=float, metavar="S")
    parser.add_argument("--calibration", metavar="FILE", help="where to write the calibration")
    return parser.parse_args()


def mapping(columns):
    """Heading and factor of each field."""
    mapped = {field: (field, 1.0) for field in FIELDS}
    for column in columns:
        field, _, rest = column.partition("=")
        heading, _, factor = rest.rpartition(":") if ":" in rest else (rest, "", "1")
        if field not in FIELDS:
            raise ValueError(f"{field} is no field: one of {', '.join(FIELDS)}")
        mapped[field] = (heading, float(factor))
    return mapped


def telemetry(asked):
    """Columns of the log; a row that lacks a figure is left out and counted."""
    with open(asked.log, newline="", encoding="utf-8-sig") as file:
        rows = csv.DictReader(file)
        found = {f: m for f, m in mapping(asked.column).items() if m[0] in (rows.fieldnames or [])}
        columns = {field: [] for field in found}
        left_out = 0
        for row in rows:
            try:
                figures = {field: float(row[heading]) * factor for field, (heading, factor) in found.items()}
            except (TypeError, ValueError):
                left_out += 1
                continue
            if (asked.from_s is None or figures.get("time_s", 0) >= asked.from_s) and (
                asked.to_s is None or figures.get("time_s", 0) <= asked.to_s
            ):
                for field, figure in figures.items():
                    columns[field].append(round(figure, 9))
    if left_out:
        print(f"{left_out} rows lack a figure and are left out", file=sys.stderr)
    return columns


def thinned(columns):
    """Every so many rows, so that the request is not too large."""
    rows = len(columns.get("time_s", []))
    stride = max(1, -(-rows // MOST_ROWS), -(-len(json.dumps(columns)) // MOST_BYTES))
    if stride > 1:
        print(f"one row in {stride} is sent", file=sys.stderr)
    return {field: figures[::stride] for field, figures in columns.items()}


def ask(request):
    url = os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080") + "/v1/flight-review"
    with urlopen(Request(url, json.dumps(request).encode(), {"Content-Type": "application/json"}), timeout=60) as answer:
        return json.load(answer)


def told(review):
    print(f"verdict: {review['verdict']}")
    for finding in review["findings"]:
        print(f"  {finding['severity']}: {finding['message']}")
    for field in ["duration_s", "distance_km", "charge_used_ah", "energy_used_wh", "mean_power_w", "energy_wh_per_km"]:
        if field in review:
            print(f"{field}: {review[field]:.4g}")
    for part in ["wind", "pack", "steady_power", "calibration"]:
        for field, figure in review.get(part, {}).items():
            if isinstance(figure, (int, float)):
                print(f"{part}.{field}: {figure:.4g}")


def main():
    asked = arguments()
    try:
        request = {"telemetry": thinned(telemetry(asked))}
        for part in ["aircraft", "pack"]:
            if getattr(asked, part):
                with open(getattr(asked, part), encoding="utf-8") as file:
                    request[part] = json.load(file)
        review = ask(request)
    except HTTPError as refused:
        problem = json.load(refused)
        for fault in problem.get("errors", [{"at": "", "message": problem.get("title", "refused")}]):
            print(f"{fault['at']}: {fault['message']}", file=sys.stderr)
        return 4 if refused.code in (429, 503) else 3
    except (OSError, ValueError) as wrong:
        print(wrong, file=sys.stderr)
        return 4 if isinstance(wrong, URLError) else 3
    told(review)
    if asked.calibration:
        if "calibration" not in review:
            print("no calibration: the findings say why", file=sys.stderr)
        else:
            with open(asked.calibration, "w", encoding="utf-8") as file:
                json.dump(review["calibration"], file, indent=2)
    return CODES[review["verdict"]]


sys.exit(main())
