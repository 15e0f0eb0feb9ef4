#!/usr/bin/env python3
"""Plans the photo flights over a block: lines, flights, and energy against what is in the pack, with its band.

    python3 plan_block.py                                  the service's example aircraft and its block
    python3 plan_block.py aircraft.json block.geojson      an aircraft and a block of your own
    python3 plan_block.py aircraft.json --geojson out.geojson

The aircraft is a document of /v1/build-review whose `survey` holds the camera and how it is flown. The block is GeoJSON
(RFC 7946): a polygon, or a feature with one; without a file it is that of the document. `--geojson` writes block, home and
lines with their flights, for any program that reads GeoJSON; lines that no flight reaches have the flight null.
The service is at TRESTLE_URL, or http://127.0.0.1:8080. It needs Python 3.8 or later and nothing else.
Exit codes, the worse of aircraft and block: 0 fit, 1 attention, 2 stop; 3 a file or a field is wrong, 4 no service.
"""
import argparse
import json
import math
import os
import sys
from http.client import HTTPException
from urllib.error import HTTPError
from urllib.request import Request, urlopen

URL = os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080").rstrip("/")
CODES = {"fit": 0, "attention": 1, "stop": 2}
PROBLEM, NO_SERVICE = 3, 4
TIMEOUT_S = 60

# Fields of an aircraft's survey that belong to the energy of a flight in a calculation of its own.
OF_ENERGY = ["overhead_energy_wh", "home", "way_km"]

# The WGS 84 ellipsoid.
EQUATOR_M, ECCENTRICITY2 = 6378137.0, 0.00669437999014


class Problem(Exception):
    """A file is not what it should be."""


def arguments():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.error = lambda message: parser.exit(PROBLEM, f"{parser.prog}: {message}\n")
    parser.add_argument("aircraft", nargs="?", metavar="AIRCRAFT.json")
    parser.add_argument("block", nargs="?", metavar="BLOCK.geojson")
    parser.add_argument("--geojson", metavar="FILE", help="where to write block, home and lines")
    return parser.parse_args()


def ask(path, request=None):
    body = None if request is None else json.dumps(request).encode()
    with urlopen(Request(f"{URL}/v1/{path}", body, {"Content-Type": "application/json"}), timeout=TIMEOUT_S) as answer:
        return json.load(answer)


def read(path):
    with open(path, encoding="utf-8-sig") as file:
        try:
            document = json.load(file)
        except ValueError as wrong:
            raise Problem(f"{path}: not JSON: {wrong}") from None
    if not isinstance(document, dict):
        raise Problem(f"{path}: an object is expected")
    return document


def polygon(path):
    """The one polygon of a file of GeoJSON."""
    shape = read(path)
    if shape.get("type") == "FeatureCollection":
        features = shape.get("features") or []
        if len(features) != 1:
            raise Problem(f"{path}: it holds {len(features)} features: plan one polygon at a time")
        shape = features[0]
    if shape.get("type") == "Feature":
        shape = shape.get("geometry") or {}
    if shape.get("type") != "Polygon":
        raise Problem(f"{path}: it is a {shape.get('type')}: a Polygon of GeoJSON is expected")
    return {"type": "Polygon", "coordinates": shape.get("coordinates")}


def survey_of(aircraft, area, review):
    """The survey as a question of its own, with the band of the power; without energy where the review has none."""
    survey = aircraft["survey"]
    question = {name: value for name, value in survey.items() if name not in OF_ENERGY}
    if area:
        question["area"] = area
        question.pop("area_km2", None)
    figures, bands = review["key_figures"], review.get("bands", {})
    airspeed = figures.get("cruise_airspeed_m_per_s")
    if airspeed is None:
        raise Problem("the review knows no cruise airspeed: give /flight/airspeed_m_per_s")
    question["airspeed_m_per_s"] = airspeed
    usable_wh = figures.get("usable_energy_wh", 0)
    if "cruise_power_w" in figures and usable_wh > 0:
        energy = review["endurance"]["energy"]
        question["energy"] = {
            "cruise_power_w": figures["cruise_power_w"],
            "usable_energy_wh": usable_wh,
            "reserve_percent": 100 * energy["reserve_wh"] / energy["available_wh"],
            **{name: survey[name] for name in OF_ENERGY if name in survey},
        }
        if "cruise_power_w" in bands:
            question["energy"]["high_cruise_power_w"] = bands["cruise_power_w"]["p90"]
    return question


def at_the_bad_end(question, bands):
    """The same flown with power and pack at the bad ends of their bands together; none without bands."""
    if "energy" not in question or not {"cruise_power_w", "usable_energy_wh"} <= bands.keys():
        return None
    energy = dict(question["energy"], cruise_power_w=bands["cruise_power_w"]["p90"])
    energy.pop("high_cruise_power_w", None)
    energy["usable_energy_wh"] = bands["usable_energy_wh"]["p10"]
    return dict(question, energy=energy)


def length_m(line):
    """Length of a line of a few kilometres on the ellipsoid, m: the radii of curvature at its middle."""
    (lon_a, lat_a), (lon_b, lat_b) = line[0][:2], line[-1][:2]
    middle = math.radians((lat_a + lat_b) / 2)
    bend = 1 - ECCENTRICITY2 * math.sin(middle) ** 2
    across = EQUATOR_M / math.sqrt(bend)
    along = EQUATOR_M * (1 - ECCENTRICITY2) / bend**1.5
    return math.hypot(math.radians(lon_b - lon_a) * math.cos(middle) * across, math.radians(lat_b - lat_a) * along)


def flight_of(number, flights):
    """The flight, from 1, that a line belongs to; none where no flight reaches it."""
    return next((nth for nth, it in enumerate(flights, 1) if it["first_line"] <= number <= it["last_line"]), None)


def minutes(seconds):
    return f"{seconds / 60:.1f} min"


def print_plan(plan, review):
    print(f"aircraft: {review['verdict']}, block: {plan['verdict']}")
    for finding in plan["findings"]:
        print(f"  {finding['severity']}: {finding['message']}")
    for check in plan["checks"]:
        if check["outcome"] == "not_judged":
            print(f"  not judged: {check['about']}; give {', '.join(check.get('give', []))}")
    print(f"\nblock  {plan['area_km2']:.2f} km², {plan['ground_sample_distance_cm']:.1f} cm a pixel"
          f" from {plan['height_above_ground_m']:.0f} m above flat ground")
    print(f"lines  {plan['lines']}, {plan['line_spacing_m']:.0f} m apart at {plan['line_direction_deg']:.0f}°,"
          f" {plan['line_length_km']:.1f} km; {plan['photos']} photos, one every {plan['trigger_distance_m']:.0f} m")
    if "flight_time_s" in plan:
        print(f"time   {minutes(plan['line_time_s'])} on the lines, {minutes(plan['turn_time_s'])} between them")
    else:
        print("time   none: the wind is too strong for these lines")


def print_lines(plan):
    if "lines_geojson" not in plan:
        print("\nlines without a place: give the block as a polygon")
        return
    print("\nline flight       from lat, lon           to lat, lon      m")
    for number, line in enumerate(plan["lines_geojson"]["coordinates"], 1):
        ends = ["%10.5f %10.5f" % (lat, lon) for lon, lat in (line[0][:2], line[-1][:2])]
        print(f"{number:4}{flight_of(number, plan.get('flights', [])) or '-':>7} {ends[0]} {ends[1]}{length_m(line):7.0f}")


def print_flights(plan, question, cautious, bands):
    energy = question.get("energy")
    if energy is None:
        print("\nenergy not judged: the review knows no power in cruise or no energy of the pack")
        return
    kept = 1 - energy["reserve_percent"] / 100
    print(f"\nin the pack to the cutoff {energy['usable_energy_wh']:.0f} Wh{band(bands, 'usable_energy_wh', 'Wh')}")
    print(f"power in cruise {energy['cruise_power_w']:.0f} W{band(bands, 'cruise_power_w', 'W')}")
    print(f"a flight has {energy['usable_energy_wh'] * kept:.0f} Wh above the reserve of {energy['reserve_percent']:.0f} %")
    if "energy_wh" in plan:
        print(f"all flights together take {plan['energy_wh']:.0f} Wh")
    for number, flight in enumerate(plan.get("flights", []), 1):
        print(f"  flight {number}: lines {flight['first_line']} to {flight['last_line']}, {minutes(flight['time_s'])},"
              f" {flight['energy_wh']:.0f} Wh")
    print(f"flights needed: {plan.get('flights_needed', 'cannot be flown so')}")
    if "high_cruise_power_w" in energy:
        print(f"  at the power that nine of ten stay below: {plan.get('flights_needed_at_high_power', 'cannot be flown so')}")
    if cautious:
        print(f"  with the pack at the low end of its band too: {cautious.get('flights_needed', 'cannot be flown so')}")
    else:
        print("  no band: the review gives none for this aircraft")


def band(bands, name, unit):
    return f" ({bands[name]['p10']:.0f} to {bands[name]['p90']:.0f} {unit}, eight of ten)" if name in bands else ""


def geojson(plan, question):
    """Block, home and lines as features."""
    def feature(kind, coordinates, **properties):
        return {"type": "Feature", "properties": properties, "geometry": {"type": kind, "coordinates": coordinates}}

    features = []
    if "area" in question:
        features.append(feature("Polygon", question["area"]["coordinates"], name="block"))
    if "home" in question.get("energy", {}):
        features.append(feature("Point", question["energy"]["home"], name="home"))
    for number, line in enumerate(plan["lines_geojson"]["coordinates"], 1):
        flight = flight_of(number, plan.get("flights", []))
        features.append(feature("LineString", line, name=f"line {number}", line=number, flight=flight))
    return {"type": "FeatureCollection", "features": features}


def plan_block(asked):
    aircraft = read(asked.aircraft) if asked.aircraft else ask("build-review/example")
    if not isinstance(aircraft.get("survey"), dict):
        raise Problem("the aircraft has no survey: give /survey with the camera")
    area = polygon(asked.block) if asked.block else None
    if area:
        aircraft["survey"] = {name: value for name, value in aircraft["survey"].items() if name != "area_km2"}
        aircraft["survey"]["area"] = area
    review = ask("build-review", aircraft)
    bands = review.get("bands", {})
    question = survey_of(aircraft, area, review)
    plan = ask("survey-coverage", question)
    worse = at_the_bad_end(question, bands)
    print_plan(plan, review)
    print_lines(plan)
    print_flights(plan, question, ask("survey-coverage", worse) if worse else None, bands)
    print()
    for caution in plan["cautions"]:
        print(f"- {caution}")
    if asked.geojson and "lines_geojson" not in plan:
        raise Problem("nothing is written: lines have no place until the block is a polygon")
    if asked.geojson:
        with open(asked.geojson, "w", encoding="utf-8") as file:
            json.dump(geojson(plan, question), file, indent=1)
    return max(CODES[review["verdict"]], CODES[plan["verdict"]])


def main():
    for stream in (sys.stdout, sys.stderr):
        stream.reconfigure(errors="replace")  # not every terminal can write ²
    try:
        return plan_block(arguments())
    except HTTPError as refused:  # it is an OSError too, so it comes first
        if refused.headers.get_content_type() != "application/problem+json":
            print(f"what answers at {URL} is not Trestle", file=sys.stderr)
            return NO_SERVICE
        problem = json.load(refused)
        print(problem["title"], file=sys.stderr)
        for fault in problem.get("errors", []):
            print(f"  {fault['at'] or 'the document'}: {fault['message']}", file=sys.stderr)
        return NO_SERVICE if refused.code == 429 or refused.code >= 500 else PROBLEM
    except Problem as wrong:
        print(wrong, file=sys.stderr)
        return PROBLEM
    except (HTTPException, ValueError, KeyError) as wrong:
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
