#!/usr/bin/env python3
"""Writes aircraft.fods, the spreadsheet beside this script.

Edit this script instead of the spreadsheet's XML, and run it: python3 make.py. It needs Python 3.8 or
later, and the examples of api-spec beside it. Formulas are written here as in the spreadsheet, with ; between arguments.
"""

import json
import re
import sys
from pathlib import Path
from xml.sax.saxutils import escape, quoteattr

ADDRESS = "http://127.0.0.1:8080"
SERVICE = "Balance.$B$3"

EXAMPLES = Path(__file__).resolve().parents[2] / "api-spec" / "examples"

# An address of 2,048 characters, less what asks for one value of the answer.
LONGEST_IN_EXCEL = 2000

AID = "An aid, not an approval: local rules, makers' data and licensed practice come first."


def example(calculation):
    """The request that the service gives as an example, which is what the blue cells begin with."""
    (file,) = (EXAMPLES / calculation).glob("*.request.json")
    return json.loads(file.read_text(encoding="utf-8"))["value"]


def at(document, dotted):
    """The value at a dotted name; none where it is not given."""
    for name in dotted.split("."):
        if document is None:
            return None
        document = document[int(name)] if isinstance(document, list) else document.get(name)
    return document


WEIGHED = example("mass-balance")
FLOWN_AS = example("endurance")
LEAD = example("wire-sizing")

ITEM_FIELDS = ["name", "mass_g", "quantity", "arm_mm", "lateral_mm", "vertical_mm"]
ITEMS = [tuple(item.get(field) for field in ITEM_FIELDS) for item in WEIGHED["items"]]
ITEM_ROWS = range(7, 23)
MORE_ITEM_ROWS = range(6, 50)

PANEL_FIELDS = ["root_chord_mm", "tip_chord_mm", "span_mm", "sweep_mm", "dihedral_deg"]
PANELS = [tuple(panel.get(field) for field in PANEL_FIELDS) for panel in WEIGHED["wing"]["panels"]]
PANEL_ROWS = range(26, 29)

BALANCE = [
    (label, field, at(WEIGHED, field), unit)
    for label, field, unit in [
        ("Wing's leading edge at the root", "wing.root_leading_edge_arm_mm", "mm"),
        ("Area of the tail", "tail.area_dm2", "dm²"),
        ("Span of the tail", "tail.span_mm", "mm"),
        ("Tail's quarter chord", "tail.quarter_chord_arm_mm", "mm"),
        ("Maximum take-off mass", "limits.max_takeoff_mass_g", "g"),
        ("Forward limit of the CG", "limits.forward_percent_mac", "% MAC"),
        ("Aft limit of the CG", "limits.aft_percent_mac", "% MAC"),
        ("Limit of the CG to either side", "limits.lateral_mm", "mm"),
        ("Static margin to aim for", "target_static_margin_percent", "%"),
    ]
]
BALANCE_ROW = 31

BALANCED = [
    ("Verdict", "/verdict", "verdict", ""),
    ("Take-off mass", "/total_mass_g", "whole", "g"),
    ("CG, aft of the datum", "/cg_arm_mm", "tenth", "mm"),
    ("CG on the mean aerodynamic chord", "/cg_percent_mac", "tenth", "% MAC"),
    ("Static margin", "/static_margin_percent", "tenth", "%"),
    ("Neutral point", "/neutral_point_arm_mm", "tenth", "mm"),
    ("Mean aerodynamic chord", "/mean_aerodynamic_chord_mm", "tenth", "mm"),
    ("Wing area", "/wing_area_dm2", "tenth", "dm²"),
    ("Wing span", "/wing_span_mm", "whole", "mm"),
    ("Wing loading", "/wing_loading_g_per_dm2", "tenth", "g/dm²"),
]
BALANCED_ROW = 7

RUN_FIELDS = [
    ("Current, A", "current_a"),
    ("Length one way, mm", "length_mm"),
    ("Supply, V", "supply_voltage_v"),
    ("Maximum drop, %", "max_drop_percent"),
    ("Insulation", "insulation"),
    ("Wires bundled", "bundled_conductors"),
]
RUNS = [
    ("pack to controller", *(LEAD.get(field) for _, field in RUN_FIELDS)),
    ("sampler feed", 0.72, 420, 9, 3, "pvc_105", None),
    ("wing servos", 3.6, 900, 6, 5, "pvc_105", 3),
    ("tail servos", 5.4, 1300, 6, 5, "pvc_105", 3),
    ("radio link", 0.6, 300, 5.2, 3, "pvc_80", None),
]
RUN_ROWS = range(6, 14)
SIZED = [
    ("Gauge", "/recommended/gauge", "text"),
    ("Area, mm²", "/recommended/area_mm2", "hundredth"),
    ("Drop, V", "/recommended/drop_v", "hundredth"),
    ("Drop, %", "/recommended/drop_percent", "hundredth"),
    ("Wire, °C", "/recommended/conductor_temperature_c", "whole"),
    ("Loss, W", "/recommended/loss_w", "hundredth"),
    ("Mass, g", "/recommended/mass_g", "tenth"),
    ("Verdict", "/verdict", "verdict"),
]
INSULATIONS = ["pvc_80", "pvc_105", "xlpe_125", "etfe_150", "silicone_200", "ptfe_200", "ptfe_260"]

FLIGHT = [
    (label, field, at(FLOWN_AS, field) if linked is None else linked, unit)
    for label, field, linked, unit in [
        ("Take-off mass", "takeoff_mass_g", "=Balance.I8", "g"),
        ("Wing area", "wing_area_dm2", "=Balance.I14", "dm²"),
        ("Wing span", "wing_span_mm", "=Balance.I15", "mm"),
        ("Drag coefficient without lift", "drag.zero_lift_coefficient", None, ""),
        ("Oswald's efficiency", "drag.oswald_efficiency", None, ""),
        ("Maximum lift coefficient", "max_lift_coefficient", None, ""),
        ("Efficiency of the propeller", "efficiency.propeller", None, ""),
        ("Efficiency of the motor", "efficiency.motor", None, ""),
        ("Efficiency of the controller", "efficiency.controller", None, ""),
        ("Everything but the drive", "systems_power_w", None, "W"),
        ("Cells in series", "pack.segments.0.series", None, ""),
        ("Cells in parallel", "pack.segments.0.parallel", None, ""),
        ("Chemistry", "pack.segments.0.cell.chemistry", None, ""),
        ("Capacity of a cell", "pack.segments.0.cell.capacity_ah", None, "Ah"),
        ("Resistance of a cell", "pack.segments.0.cell.dc_resistance_milliohm", None, "mΩ"),
        ("Cutoff, each cell", "pack.cutoff.cell_voltage_v", None, "V"),
        ("Air around the pack", "pack.ambient_c", None, "°C"),
        ("Altitude", "conditions.altitude_m", None, "m"),
        ("Temperature", "conditions.temperature_c", None, "°C"),
        ("Headwind", "headwind_m_per_s", None, "m/s"),
        ("Reserve", "reserve_percent", None, "%"),
        ("Airspeed of your own", "airspeed_m_per_s", None, "m/s"),
    ]
]
FLIGHT_ROW = 5
CHEMISTRIES = ["li_ion", "lipo", "lfp"]

FLOWN = [
    ("Verdict", "/verdict", "verdict", ""),
    ("Stall", "/stall_speed_m_per_s", "tenth", "m/s"),
    ("Longest endurance", "/best_endurance/endurance_h", "hundredth", "h"),
    ("at an airspeed of", "/best_endurance/airspeed_m_per_s", "tenth", "m/s"),
    ("and a power of", "/best_endurance/power_w", "tenth", "W"),
    ("Farthest range over ground", "/best_range/ground_range_km", "tenth", "km"),
    ("at an airspeed of", "/best_range/airspeed_m_per_s", "tenth", "m/s"),
    ("At your airspeed", "/at_airspeed/endurance_h", "hundredth", "h"),
    ("a range over ground of", "/at_airspeed/ground_range_km", "tenth", "km"),
    ("a power of", "/at_airspeed/power_w", "tenth", "W"),
    ("a current of", "/at_airspeed/current_a", "hundredth", "A"),
    ("Radius of action", "/radius_of_action_km", "tenth", "km"),
    ("Energy above the cutoff", "/energy/available_wh", "whole", "Wh"),
]
WINDS = [0, 2, 4, 6, 8, 10]
WIND_ROW = 20



def placed(rows, field_at, first, wanted):
    """The row of a field among rows that begin at one."""
    return first + next(index for index, row in enumerate(rows) if row[field_at] == wanted)


def flight_cell(field):
    """Where the sheet Endurance holds a field."""
    return "=Endurance.B%d" % placed(FLIGHT, 1, FLIGHT_ROW, field)


def flown_cell(pointer):
    """Where the sheet Endurance shows a value."""
    return "=Endurance.F%d" % placed(FLOWN, 1, FLIGHT_ROW, pointer)


def filled(calculation, rows):
    """Labels, fields, values and units; the value is that of the example unless another cell holds it."""
    request = example(calculation)
    return [(label, field, at(request, field) if linked is None else linked, unit) for label, field, linked, unit in rows]


def panel_rows():
    """Wing panels of the sheet Balance; one that is not there stays empty."""
    for index, row in enumerate(PANEL_ROWS):
        for column, what, field in zip("BCDE", ["root", "tip", "span", "sweep"], PANEL_FIELDS):
            place = "Balance.%s%d" % (column, row)
            linked = '=IF(ISBLANK(%s);"";%s)' % (place, place)
            yield "Panel %d, %s" % (index + 1, what), "wing.panels.%d.%s" % (index, field), linked, "mm"


def spar_rows():
    for index in (0, 1):
        for what, field, unit in (
            ("from", "from_lateral_mm", "mm"),
            ("to", "to_lateral_mm", "mm"),
            ("shape", "shape", ""),
            ("outside diameter", "outside_diameter_mm", "mm"),
            ("inside diameter", "inside_diameter_mm", "mm"),
            ("material", "material", ""),
        ):
            yield "Spar %d, %s" % (index + 1, what), "spars.%d.%s" % (index, field), None, unit


CELL = "segments.0.cell."

# Sheets of one question each: title, what it is about, calculation, what is entered and what is shown.
PARTS = {
    "Charging": (
        "Charging",
        "One pack on one charger. The cells are those of the sheet Endurance; write over them to try others.",
        "pack-charge",
        filled("pack-charge", [
            ("Cells in series", "segments.0.series", flight_cell("pack.segments.0.series"), ""),
            ("Cells in parallel", "segments.0.parallel", flight_cell("pack.segments.0.parallel"), ""),
            ("Chemistry", CELL + "chemistry", flight_cell("pack.segments.0.cell.chemistry"), ""),
            ("Capacity of a cell", CELL + "capacity_ah", flight_cell("pack.segments.0.cell.capacity_ah"), "Ah"),
            ("Resistance of a cell", CELL + "dc_resistance_milliohm", flight_cell("pack.segments.0.cell.dc_resistance_milliohm"), "mΩ"),
            ("Mass of a cell", CELL + "mass_g", None, "g"),
            ("Most that a cell takes", CELL + "max_charge_current_a", None, "A"),
            ("State of charge", "segments.0.state_of_charge_percent", None, "%"),
            ("Health", "segments.0.health_percent", None, "%"),
            ("Air around the pack", "ambient_c", None, "°C"),
            ("Pack at the start", "pack_temperature_c", None, "°C"),
            ("Covering", "covering", None, ""),
            ("Charger, most current", "charger.max_current_a", None, "A"),
            ("Charger, most power", "charger.max_power_w", None, "W"),
            ("Charger, most voltage", "charger.max_voltage_v", None, "V"),
            ("Charger, efficiency", "charger.efficiency", None, ""),
            ("Current that is set", "current_a", None, "A"),
            ("Supply, kind of battery", "supply.battery.kind", None, ""),
            ("Supply, capacity", "supply.battery.capacity_ah", None, "Ah"),
        ]),
        [
            ("Verdict", "/verdict", "verdict", ""),
            ("Time to 80 %", "/time_to_80_percent_h", "hundredth", "h"),
            ("Time to full", "/time_to_full_h", "hundredth", "h"),
            ("Limited by", "/limited_by", "text", ""),
            ("Ends because", "/end_reason", "text", ""),
            ("Charge that goes in", "/charge_in_ah", "hundredth", "Ah"),
            ("Energy that goes in", "/energy_in_wh", "whole", "Wh"),
            ("Highest temperature of the cells", "/highest_temperature_c", "tenth", "°C"),
            ("From the supply", "/supply/energy_wh", "whole", "Wh"),
            ("Share of what it may give", "/supply/share_used_percent", "whole", "%"),
        ],
    ),
    "Survey": (
        "Survey",
        "Photo flights over an area without a shape, at the airspeed, power and reserve of the sheet Endurance. plan_block.py takes a polygon.",
        "survey-coverage",
        filled("survey-coverage", [
            ("Sensor, width", "camera.sensor_width_mm", None, "mm"),
            ("Sensor, height", "camera.sensor_height_mm", None, "mm"),
            ("Pixels across", "camera.image_width_px", None, "px"),
            ("Pixels along", "camera.image_height_px", None, "px"),
            ("Focal length", "camera.focal_length_mm", None, "mm"),
            ("Shortest time between photos", "camera.least_interval_s", None, "s"),
            ("Exposure", "camera.exposure_s", None, "s"),
            ("Ground under a pixel", "ground_sample_distance_cm", None, "cm"),
            ("Overlap along the line", "forward_overlap_percent", None, "%"),
            ("Overlap of the lines", "side_overlap_percent", None, "%"),
            ("Area", "area_km2", 1.5, "km²"),
            ("Wind", "wind.speed_m_per_s", None, "m/s"),
            ("Wind, from", "wind.from_deg", None, "°"),
            ("Bank of the turns", "turn.bank_deg", None, "°"),
            ("Airspeed", "airspeed_m_per_s", flight_cell("airspeed_m_per_s"), "m/s"),
            ("Power at that airspeed", "energy.cruise_power_w", flown_cell("/at_airspeed/power_w"), "W"),
            ("Power that nine of ten stay below", "energy.high_cruise_power_w", None, "W"),
            ("Energy above the cutoff", "energy.usable_energy_wh", flown_cell("/energy/available_wh"), "Wh"),
            ("Reserve", "energy.reserve_percent", flight_cell("reserve_percent"), "%"),
            ("Launch, climb and landing", "energy.overhead_energy_wh", None, "Wh"),
            ("Way out, and as much back", "energy.way_km", 0.4, "km"),
        ]),
        [
            ("Verdict", "/verdict", "verdict", ""),
            ("Height above the ground", "/height_above_ground_m", "whole", "m"),
            ("Lines", "/lines", "whole", ""),
            ("Distance of the lines", "/line_spacing_m", "tenth", "m"),
            ("Length of the lines", "/line_length_km", "tenth", "km"),
            ("Photos", "/photos", "whole", ""),
            ("A photo every", "/trigger_distance_m", "tenth", "m"),
            ("Time on the lines", "/line_time_s", "whole", "s"),
            ("Time between them", "/turn_time_s", "whole", "s"),
            ("Energy of all flights", "/energy_wh", "whole", "Wh"),
            ("Flights", "/flights_needed", "whole", ""),
            ("Flights at the higher power", "/flights_needed_at_high_power", "whole", ""),
        ],
    ),
    "Loads": (
        "Loads",
        "Wing, spars, joint and landing. Mass and wing are those of the sheet Balance. Flutter is never judged.",
        "airframe-loads",
        filled("airframe-loads", [
            ("Take-off mass", "takeoff_mass_g", "=Balance.I%d" % placed(BALANCED, 1, BALANCED_ROW, "/total_mass_g"), "g"),
            ("Leading edge at the root", "wing.root_leading_edge_arm_mm", "=Balance.B%d" % BALANCE_ROW, "mm"),
            *panel_rows(),
            ("Mass of the first panel", "wing.panels.0.mass_g", None, "g"),
            ("Mass of the second panel", "wing.panels.1.mass_g", None, "g"),
            ("Maximum lift coefficient", "max_lift_coefficient", flight_cell("max_lift_coefficient"), ""),
            ("Cruise", "speeds.cruise_airspeed_m_per_s", None, "m/s"),
            ("Fastest in level flight", "speeds.top_airspeed_m_per_s", None, "m/s"),
            ("Never faster than", "speeds.never_exceed_airspeed_m_per_s", None, "m/s"),
            ("Load factor, up", "load_limits.positive_load_factor", None, ""),
            ("Load factor, down", "load_limits.negative_load_factor", None, ""),
            *spar_rows(),
            ("Landing, sink rate", "landing.sink_rate_m_per_s", None, "m/s"),
            ("Landing, airspeed", "landing.touchdown_airspeed_m_per_s", None, "m/s"),
            ("Landing, way that gives", "landing.stopping_distance_mm", None, "mm"),
            ("Landing, slide", "landing.slide_distance_m", None, "m"),
        ]),
        [
            ("Verdict", "/verdict", "verdict", ""),
            ("Stall", "/stall_speed_m_per_s", "tenth", "m/s"),
            ("Full deflection up to", "/manoeuvre_speed_m_per_s", "tenth", "m/s"),
            ("Load factor at the limit", "/limit_load_factor", "hundredth", ""),
            ("Load factor of a gust in cruise", "/gust/load_factor_at_cruise", "hundredth", ""),
            ("Weakest part", "/weakest/part", "text", ""),
            ("at", "/weakest/lateral_mm", "whole", "mm"),
            ("its reserve factor", "/weakest/reserve_factor", "hundredth", ""),
            ("Tip rises in level flight by", "/tip_deflection/one_g_mm", "tenth", "mm"),
            ("Load of a half wing in a proof test", "/proof_test/half_wing_load_n", "tenth", "N"),
            ("Load factor of the landing", "/landing/load_factor", "hundredth", ""),
        ],
    ),
}
PART_ROW = 6

FINDINGS = 3

# Rows for the checks and the cautions of each question; more than any of them has with a few legs.
CHECK_ROWS = range(6, 41)
CAUTION_ROWS = range(6, 42, 3)

# Where the sheet Answers keeps the text of each answer: of the balance, the endurance, then of each run.
ANSWERS = {"Balance": 3, "Endurance": 4}
RUN_ANSWERS = 5
PART_ANSWERS = {name: RUN_ANSWERS + len(RUN_ROWS) + index for index, name in enumerate(PARTS)}
CHOSEN_RUN = "Checks.$L$4"

NOTES = [
    ("How it works", None),
    (None, "Enter values in the blue cells, which begin with the example of the service. Every other number is asked of the service when a cell that it depends on changes."),
    (None, "The grey columns hold the question: the fields by their dotted names, lists from 0, an empty value for what is not given."),
    (None, "pick=/cg_arm_mm asks for one value of the answer, by its JSON Pointer; errors=inline gives what is wrong as text."),
    (None, "NUMBERVALUE(…;\".\") and SUBSTITUTE(…;\",\";\".\") make it work where numbers have a decimal comma."),
    (None, "Names and values are those of the contract: the service's /docs shows them all, and /v1 an example of each question."),
    (None, "The sheet Checks lists what was judged, with its margin, and what was not, with the field to give. It reads the text of an"),
    (None, "answer on the sheet Answers, which is longer than the 32,767 characters that a cell of Excel holds."),
    ("If cells show #VALUE! or Err:540", None),
    (None, "#VALUE!: the service does not answer at the address on the sheet Balance. Err:540: LibreOffice may not fetch for this file."),
    (None, "Tools > Options > LibreOffice > Security > Macro Security > Trusted Sources: add this file's folder, then load it again."),
    (None, "LibreOffice may ask on loading whether to update links: allow it."),
    ("Other spreadsheet programs", None),
    (None, "Only LibreOffice was tried. What follows is from the other programs' documentation."),
    (None, "Excel for Windows: save this file as .xlsx. Its WEBSERVICE takes addresses up to 2,048 characters; the grey cells count them."),
    (None, "Whatever goes wrong, it shows #VALUE!; with errors=inline it shows what is wrong instead. Excel for Mac has no WEBSERVICE."),
    (None, "Power Query: Data > From Web with an address that ends in &as=csv, or Web.Contents with a Content, which posts it."),
    (None, "Google Sheets fetches from its own servers, so the service needs a public address: =IMPORTDATA(address & \"&as=csv\")."),
    ("Many rows at once", None),
    (None, "Save a sheet as CSV with the fields' dotted names in its first row and post it: see README.md beside this file."),
]

FUNCTIONS = ("WEBSERVICE", "ENCODEURL", "TEXTJOIN")


def name_of(column):
    return "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[column]


def open_formula(formula):
    """A formula as OpenDocument spells it: references in brackets, functions by their full name."""
    parts = re.split(r'("[^"]*")', formula)
    for index in range(0, len(parts), 2):
        part = re.sub(
            r"(?:([A-Z][a-z]+)\.)?(\$?[A-Z]\$?\d+)(:\$?[A-Z]\$?\d+)?",
            lambda m: "[%s.%s%s]" % ("$" + m[1] if m[1] else "", m[2], ":." + m[3][1:] if m[3] else ""),
            parts[index],
        )
        for function in FUNCTIONS:
            part = part.replace(function + "(", "COM.MICROSOFT." + function + "(")
        parts[index] = part
    return "of:=" + "".join(parts)


CONDITIONS = {
    "verdict": [("fit", "fit"), ("attention", "attention"), ("stop", "stop")],
    "outcome": [("not judged", "open"), ("attention", "attention"), ("stop", "stop")],
}


class Sheet:
    """Cells by row and column, and what a sheet looks like."""

    def __init__(self, name, widths, printed, rows="row"):
        self.name = name
        self.widths = widths
        self.printed = printed
        self.rows = rows
        self.cells = {}
        self.conditional = []

    def put(self, place, value, style="plain", span=(1, 1), choices=None):
        """Fills a cell, over as many columns and rows as it spans."""
        column, row = ord(place[0]) - ord("A"), int(place[1:])
        for step in range(span[0] * span[1]):
            self.cells[row + step // span[0], column + step % span[0]] = None
        self.cells[row, column] = (value, style, span, choices)
        if style in CONDITIONS:
            self.conditional.append((place, CONDITIONS[style]))

    def table(self):
        printed = ":".join("%s.%s" % (self.name, corner) for corner in self.printed.split(":"))
        yield '<table:table table:name="%s" table:style-name="sheet" table:print-ranges="%s">' % (self.name, printed)
        for width in self.widths:
            yield '<table:table-column table:style-name="width%s"/>' % str(width).replace(".", "_")
        for row in range(1, max(row for row, _ in self.cells) + 1):
            yield '<table:table-row table:style-name="%s">' % self.rows
            last = max((column for line, column in self.cells if line == row), default=0)
            for column in range(last + 1):
                if (row, column) not in self.cells:
                    yield "<table:table-cell/>"
                elif self.cells[row, column] is None:
                    yield "<table:covered-table-cell/>"
                else:
                    yield self.cell(*self.cells[row, column])
            yield "</table:table-row>"
        if self.conditional:
            yield "<calcext:conditional-formats>"
            for place, words in self.conditional:
                here = "%s.%s" % (self.name, place)
                yield '<calcext:conditional-format calcext:target-range-address="%s:%s">' % (here, here)
                for word, applied in words:
                    yield (
                        '<calcext:condition calcext:apply-style-name="%s" calcext:value="=&quot;%s&quot;"'
                        ' calcext:base-cell-address="%s"/>' % (applied, word, here)
                    )
                yield "</calcext:conditional-format>"
            yield "</calcext:conditional-formats>"
        yield "</table:table>"

    def cell(self, value, style, span, choices):
        attributes = ' table:style-name="%s"' % style
        if span != (1, 1):
            attributes += ' table:number-columns-spanned="%d" table:number-rows-spanned="%d"' % span
        if choices:
            attributes += ' table:content-validation-name="%s"' % choices
        if value is None:
            return "<table:table-cell%s/>" % attributes
        if isinstance(value, str) and value.startswith("="):
            return "<table:table-cell%s table:formula=%s/>" % (attributes, quoteattr(open_formula(value[1:])))
        if isinstance(value, str):
            return '<table:table-cell%s office:value-type="string"><text:p>%s</text:p></table:table-cell>' % (
                attributes,
                escape(value),
            )
        return '<table:table-cell%s office:value-type="float" office:value="%s"/>' % (attributes, value)


def fetched(question, pointer):
    return 'WEBSERVICE(%s&"&pick=%s")' % (question, pointer)


def asked(question, pointer, style):
    """The formula that asks for one value, and shows a dash where there is none."""
    value = fetched(question, pointer)
    if style == "verdict":
        return '=IF(LEFT(%s;4)="#ERR";"refused";%s)' % (value, value)
    if style == "text":
        return '=IF(LEFT(%s;4)="#ERR";"–";%s)' % (value, value)
    return '=IF(LEFT(%s;4)="#ERR";"–";NUMBERVALUE(%s;"."))' % (value, value)


def said(question, index):
    """The formula that asks for a finding in plain words, or for what is wrong with the question."""
    verdict, message = fetched(question, "/verdict"), fetched(question, "/findings/%d/message" % index)
    nothing = '""' if index else 'IF(LEFT(%s;4)="#ERR";%s;"")' % (verdict, verdict)
    return '=IF(LEFT(%s;4)="#ERR";%s;%s)' % (message, nothing, message)


def text_of(question):
    """The formula that asks for a whole answer as lines of name and value."""
    return '=IFERROR(WEBSERVICE(SUBSTITUTE(%s;"errors=inline";"as=text"));"")' % question


def line(text, name):
    """The value that stands behind a name in such lines; nothing where there is none."""
    key = 'CHAR(10)&"%s "' % name
    start = "FIND(%s;%s)" % (key, text)
    length = "FIND(CHAR(10);%s;%s+1)-%s-%d" % (text, start, start, len(name) + 2)
    return 'IFERROR(TRIM(MID(%s;%s+%d;%s));"")' % (text, start, len(name) + 2, length)


def counted(column, sheet="Checks"):
    """The formula that says how the checks in a column of a sheet came out."""
    cells = "%s.$%s$%d:$%s$%d" % (sheet, column, CHECK_ROWS[0], column, CHECK_ROWS[-1])
    passed, not_judged = ('COUNTIF(%s;"%s")' % (cells, word) for word in ("passed", "not judged"))
    others = 'COUNTIF(%s;"attention")+COUNTIF(%s;"stop")' % (cells, cells)
    return '="Checks: "&%s&" passed, "&%s&" not passed, "&%s&" not judged"' % (passed, others, not_judged)


def number(place):
    return 'SUBSTITUTE(%s;",";".")' % place


def heading(sheet, row, columns):
    for column, text in columns:
        sheet.put("%s%d" % (column, row), text, "heading")


def results(sheet, row, column, question, wanted):
    """Labels, values and units of what is asked, one below the other."""
    label, value, unit = (chr(ord(column) + step) for step in range(3))
    for index, (text, pointer, style, units) in enumerate(wanted):
        place = row + index
        sheet.put("%s%d" % (label, place), text)
        sheet.put("%s%d" % (value, place), asked(question, pointer, style), style)
        sheet.put("%s%d" % (unit, place), units, "unit")
    return row + len(wanted)


def findings(sheet, row, column, question, span):
    """The first findings, in plain words."""
    sheet.put("%s%d" % (column, row), "What it finds", "heading", (span[0], 1))
    for index in range(FINDINGS):
        place = "%s%d" % (column, row + 1 + index * span[1])
        sheet.put(place, said(question, index), "words", span)


def question_of(sheet, label, place, calculation, parts):
    """The whole question in one grey cell, and how long it is."""
    column, row = place[0], int(place[1:])
    sheet.put("%s%d" % (column, row - 1), label, "grey")
    question = '=%s&"/v1/%s?errors=inline"&%s' % (SERVICE, calculation, parts)
    sheet.put(place, question, "grey")
    sheet.put("%s%d" % (column, row + 1), '=LEN(%s)&" characters"&IF(LEN(%s)>%d;", more than Excel takes";"")' % (place, place, LONGEST_IN_EXCEL), "grey")


def items_on(sheet, rows, items, before):
    """Rows of items; `before` is a formula's beginning that counts those of another sheet."""
    heading(sheet, rows[0] - 1, zip("ABCDEF", ["Item", "Mass, g", "Pieces", "Arm, mm", "To the right, mm", "Up, mm"]))
    sheet.put("L%d" % (rows[0] - 1), "its part of the question", "grey")
    for row, item in zip(rows, items + [(None,) * 6] * len(rows)):
        for column, value in zip("ABCDEF", item):
            sheet.put("%s%d" % (column, row), value, "inputtext" if column == "A" else "input")
        # Empty rows among the others do not count; a row that only lacks its mass does, so that it is missed.
        used = before + 'SUMPRODUCT(--((A$%d:A%d<>"")+(B$%d:B%d<>"")>0))-1' % (rows[0], row, rows[0], row)
        nth = '"&items."&%s&".' % used
        query = [nth + 'name="&ENCODEURL(A%d)' % row]
        for column, field in zip("BCDEF", ["mass_g", "quantity", "arm_mm", "lateral_mm", "vertical_mm"]):
            place = "%s%d" % (column, row)
            # Some programs cut a long question off, so what is not given takes no room in this long one.
            query.append('IF(ISBLANK(%s);"";%s)' % (place, nth + '%s="&%s' % (field, number(place))))
        sheet.put("L%d" % row, '=IF(AND(ISBLANK(A%d);ISBLANK(B%d));"";%s)' % (row, row, "&".join(query)), "grey")


def more_items():
    sheet = Sheet("Items", [5.8, 2.1, 2.1, 2.1, 2.6, 2.1] + [0.8] * 5 + [9.0], "A1:F%d" % MORE_ITEM_ROWS[-1])
    sheet.put("A1", "More items", "title")
    sheet.put("A2", "They count as those of the sheet Balance do, which shows what the service answers.", "quiet")
    sheet.put("A3", AID, "aid")
    first, last = ITEM_ROWS[0], ITEM_ROWS[-1]
    before = 'SUMPRODUCT(--((Balance.$A$%d:$A$%d<>"")+(Balance.$B$%d:$B$%d<>"")>0))+' % (first, last, first, last)
    items_on(sheet, MORE_ITEM_ROWS, [], before)
    return sheet


def balance():
    sheet = Sheet("Balance", [5.8, 2.1, 2.1, 2.1, 2.6, 2.1, 0.8, 7.0, 2.4, 1.8, 0.8, 9.0], "A1:J39")
    sheet.put("A1", "Mass and balance", "title")
    sheet.put("A2", "Enter values in the blue cells; the service computes the rest. See the sheet Notes.", "quiet")
    sheet.put("A4", AID + " See the sheet Cautions.", "aid")
    sheet.put("A3", "Service")
    sheet.put("B3", ADDRESS, "inputtext", (3, 1))
    sheet.put("E3", '=IF(ISERROR(WEBSERVICE(B3&"/health/ready"));"does not answer, or may not be asked: see Notes";"answers")', "quiet")
    items_on(sheet, ITEM_ROWS, ITEMS, "")
    heading(sheet, 25, zip("ABCDEF", ["Half wing, root outwards", "Root, mm", "Tip, mm", "Span, mm", "Sweep, mm", "Dihedral, °"]))
    for index, (row, panel) in enumerate(zip(PANEL_ROWS, PANELS + [(None,) * 5] * len(PANEL_ROWS))):
        sheet.put("A%d" % row, "panel %d" % (index + 1))
        query = []
        for column, field, value in zip("BCDEF", PANEL_FIELDS, panel):
            sheet.put("%s%d" % (column, row), value, "input")
            query.append('"&wing.panels.%d.%s="&%s' % (index, field, number("%s%d" % (column, row))))
        sheet.put("L%d" % row, '=IF(ISBLANK(B%d);"";%s)' % (row, "&".join(query)), "grey")
    heading(sheet, BALANCE_ROW - 1, zip("ABC", ["Limits and tail", "", ""]))
    for index, (label, field, value, unit) in enumerate(BALANCE):
        row = BALANCE_ROW + index
        sheet.put("A%d" % row, label)
        sheet.put("B%d" % row, value, "input")
        sheet.put("C%d" % row, unit, "unit")
        sheet.put("L%d" % row, '="&%s="&%s' % (field, number("B%d" % row)), "grey")
    last = BALANCE_ROW + len(BALANCE) - 1
    question_of(sheet, "the whole question", "L3", "mass-balance", 'TEXTJOIN("";1;L%d:L%d;Items.L%d:L%d)' % (ITEM_ROWS[0], last, MORE_ITEM_ROWS[0], MORE_ITEM_ROWS[-1]))
    heading(sheet, BALANCED_ROW - 1, zip("HIJ", ["Balance", "", ""]))
    row = results(sheet, BALANCED_ROW, "H", "$L$3", BALANCED)
    sheet.put("H%d" % row, counted("B"), "quiet", (3, 1))
    findings(sheet, row + 1, "H", "$L$3", (3, 3))
    return sheet


def wires():
    sheet = Sheet("Wires", [4.6] + [2.2] * 4 + [2.8, 2.0, 0.8] + [1.9] * 7 + [2.2, 2.0, 15.0, 9.0], "A1:R15")
    sheet.put("A1", "Wires", "title")
    sheet.put("A2", "The lightest gauge that runs neither hot nor short of volts, for each run. The return wire is counted.", "quiet")
    sheet.put("A3", AID + " See the sheet Cautions.", "aid")
    heading(sheet, 5, zip("ABCDEFG", ["Run"] + [label for label, _ in RUN_FIELDS]))
    heading(sheet, 5, zip("IJKLMNOPQR", [label for label, _, _ in SIZED] + ["Checks not judged", "What it finds first"]))
    sheet.put("S5", "the question", "grey")
    for row, run in zip(RUN_ROWS, RUNS + [(None,) * 7] * len(RUN_ROWS)):
        query = []
        for column, value in zip("ABCDEFG", run):
            is_text = column in "AF"
            choices = "insulations" if column == "F" else None
            sheet.put("%s%d" % (column, row), value, "inputtext" if is_text else "input", choices=choices)
        for column, (_, field) in zip("BCDEFG", RUN_FIELDS):
            place = "%s%d" % (column, row)
            query.append('"&%s="&%s' % (field, "ENCODEURL(%s)" % place if column == "F" else number(place)))
        sheet.put("S%d" % row, '=IF(ISBLANK(B%d);"";%s&"/v1/wire-sizing?errors=inline"&%s)' % (row, SERVICE, "&".join(query)), "grey")
        for column, (_, pointer, style) in zip("IJKLMNOP", SIZED):
            formula = asked("$S%d" % row, pointer, style)
            sheet.put("%s%d" % (column, row), '=IF(ISBLANK($B%d);"";%s)' % (row, formula[1:]), style)
        text = "Answers.$B$%d" % (RUN_ANSWERS + row - RUN_ROWS[0])
        open_checks = '(LEN(%s)-LEN(SUBSTITUTE(%s;" not_judged"&CHAR(10);"")))/12' % (text, text)
        sheet.put("Q%d" % row, '=IF(ISBLANK($B%d);"";IF(%s="";"–";%s))' % (row, text, open_checks), "whole")
        sheet.put("R%d" % row, '=IF(ISBLANK($B%d);"";%s)' % (row, said("$S%d" % row, 0)[1:]), "plain")
    last = RUN_ROWS[-1]
    sheet.put("A%d" % (last + 2), "All runs together", "heading")
    for column in "BCDEFG":
        sheet.put("%s%d" % (column, last + 2), "", "heading")
    for column, style in (("N", "hundredth"), ("O", "tenth")):
        every = "%s%d:%s%d" % (column, RUN_ROWS[0], column, last)
        whole = "COUNT(%s)=COUNT(B%d:B%d)" % (every, RUN_ROWS[0], last)
        sheet.put("%s%d" % (column, last + 2), '=IF(%s;SUM(%s);"–")' % (whole, every), style)
    return sheet


def endurance():
    sheet = Sheet("Endurance", [5.6, 2.4, 1.6, 0.8, 5.6, 2.6, 2.4, 0.8, 9.0], "A1:G34")
    sheet.put("A1", "Endurance", "title")
    sheet.put("A2", "Mass and wing are those of the sheet Balance; write over them to try others.", "quiet")
    heading(sheet, FLIGHT_ROW - 1, zip("ABC", ["Aircraft, pack and day", "", ""]))
    for index, (label, field, value, unit) in enumerate(FLIGHT):
        row = FLIGHT_ROW + index
        is_text = field.endswith("chemistry")
        style = "inputtext" if is_text else "linked" if isinstance(value, str) else "input"
        sheet.put("A%d" % row, label)
        sheet.put("B%d" % row, value, style, choices="chemistries" if is_text else None)
        sheet.put("C%d" % row, unit, "unit")
        sheet.put("I%d" % row, '="&%s="&%s' % (field, "ENCODEURL(B%d)" % row if is_text else number("B%d" % row)), "grey")
    last = FLIGHT_ROW + len(FLIGHT) - 1
    question_of(sheet, "the whole question", "I2", "endurance", 'TEXTJOIN("";1;I%d:I%d)' % (FLIGHT_ROW, last))
    heading(sheet, FLIGHT_ROW - 1, zip("EFG", ["How long and how far", "", ""]))
    row = results(sheet, FLIGHT_ROW, "E", "$I$2", FLOWN)
    sheet.put("E%d" % row, counted("G"), "quiet", (3, 1))
    sheet.put("A3", AID + " See the sheet Cautions.", "aid")
    heading(sheet, WIND_ROW - 1, zip("EFG", ["Another headwind, m/s", "Radius, km", "Range, km"]))
    wind_field = next(FLIGHT_ROW + index for index, (_, field, _, _) in enumerate(FLIGHT) if field == "headwind_m_per_s")
    for index, wind in enumerate(WINDS):
        row = WIND_ROW + index
        question = 'SUBSTITUTE($I$2;$I$%d;"&headwind_m_per_s="&%s)' % (wind_field, number("$E%d" % row))
        sheet.put("E%d" % row, wind, "input")
        sheet.put("F%d" % row, asked(question, "/radius_of_action_km", "tenth"), "tenth")
        sheet.put("G%d" % row, asked(question, "/best_range/ground_range_km", "tenth"), "tenth")
    findings(sheet, last + 2, "A", "$I$2", (7, 2))
    return sheet


def listed(sheet, title, first, text):
    """Every check of an answer: what about, how it came out, by how much, and what to give where it was not judged."""
    columns = [chr(ord(first) + step) for step in range(4)]
    heading(sheet, CHECK_ROWS[0] - 1, zip(columns, [title, "Outcome", "Margin, %", "To give"]))
    for index, row in enumerate(CHECK_ROWS):
        about, outcome, margin, give = (line(text, "checks.%d.%s" % (index, name)) for name in ("about", "outcome", "margin_percent", "give.0"))
        sheet.put("%s%d" % (columns[0], row), "=" + about)
        sheet.put("%s%d" % (columns[1], row), '=SUBSTITUTE(%s;"_";" ")' % outcome, "outcome")
        kept = 'IF(%s%d="passed";NUMBERVALUE(%s;".");-1)' % (columns[1], row, margin)
        sheet.put("%s%d" % (columns[2], row), '=IFERROR(IF(%s<0;"";%s);"")' % (kept, kept), "tenth")
        sheet.put("%s%d" % (columns[3], row), "=" + give, "quiet")
    more = line(text, "checks.%d.about" % len(CHECK_ROWS))
    sheet.put("%s%d" % (columns[0], CHECK_ROWS[-1] + 1), '=IF(%s="";"";"and more: see the sheet Answers")' % more, "quiet")


def part(name):
    """A sheet with one question: its fields, what is answered, every check and every caution."""
    title, about, calculation, fields, wanted = PARTS[name]
    last = PART_ROW + len(fields) - 1
    below = max(last, CHECK_ROWS[-1] + 1) + 2
    sheet = Sheet(name, [5.6, 2.8, 1.6, 0.8, 5.6, 2.6, 2.4, 0.8, 10.5, 2.4, 1.8, 5.2, 0.6, 9.0], "A1:L%d" % (below + 12))
    sheet.put("A1", title, "title")
    sheet.put("A2", about, "quiet")
    sheet.put("A3", AID, "aid")
    heading(sheet, PART_ROW - 1, zip("ABC", ["What is known", "", ""]))
    for index, (label, field, value, unit) in enumerate(fields):
        row = PART_ROW + index
        is_linked = isinstance(value, str) and value.startswith("=")
        is_text = field.endswith("chemistry") or isinstance(value, str) and not is_linked
        sheet.put("A%d" % row, label)
        sheet.put("B%d" % row, value, "inputtext" if is_text else "linked" if is_linked else "input")
        sheet.put("C%d" % row, unit, "unit")
        entered = "ENCODEURL(B%d)" % row if is_text else number("B%d" % row)
        sheet.put("N%d" % row, '=IF(B%d="";"";"&%s="&%s)' % (row, field, entered), "grey")
    question_of(sheet, "the whole question", "N3", calculation, 'TEXTJOIN("";1;N%d:N%d)' % (PART_ROW, last))
    heading(sheet, PART_ROW - 1, zip("EFG", ["What the service answers", "", ""]))
    row = results(sheet, PART_ROW, "E", "$N$3", wanted)
    sheet.put("E%d" % row, counted("J", name), "quiet", (3, 1))
    findings(sheet, row + 1, "E", "$N$3", (3, 3))
    text = "Answers.$B$%d" % PART_ANSWERS[name]
    listed(sheet, "Checks", "I", text)
    sheet.put("A%d" % below, "Cautions", "heading", (12, 1))
    for index in range(12):
        sheet.put("A%d" % (below + 1 + index), "=" + line(text, "cautions.%d" % index), "plain", (12, 1))
    return sheet


BLOCKS = [("Balance", "A", "Answers.$B$%d" % ANSWERS["Balance"]), ("Endurance", "F", "Answers.$B$%d" % ANSWERS["Endurance"])]
BLOCKS += [("One run of wire", "K", "INDEX(Answers.$B$%d:$B$%d;%s)" % (RUN_ANSWERS, RUN_ANSWERS + len(RUN_ROWS) - 1, CHOSEN_RUN))]


def checks():
    sheet = Sheet("Checks", [10.5, 2.4, 1.8, 5.2, 0.6] * 3, "A1:N%d" % (CHECK_ROWS[-1] + 1))
    sheet.put("A1", "Checks", "title")
    sheet.put("A2", "What was judged, with its margin to the limit, and what was not, with the field to give so that it can be.", "quiet")
    sheet.put("A3", AID + " See the sheet Cautions.", "aid")
    sheet.put("K4", "Which run of the sheet Wires, from 1")
    sheet.put("L4", 1, "input")
    for title, first, text in BLOCKS:
        listed(sheet, title, first, text)
    return sheet


def cautions():
    sheet = Sheet("Cautions", [15.0, 0.6] * 3, "A1:E%d" % (CAUTION_ROWS[-1] + 2))
    sheet.put("A1", "Cautions", "title")
    sheet.put("A3", AID, "aid")
    for column, (title, _, text) in zip("ACE", BLOCKS):
        sheet.put("%s%d" % (column, CAUTION_ROWS[0] - 1), title, "heading")
        for index, row in enumerate(CAUTION_ROWS):
            sheet.put("%s%d" % (column, row), "=" + line(text, "cautions.%d" % index), "words", (1, 3))
    return sheet


def answers():
    sheet = Sheet("Answers", [5.0, 12.0], "A1:B%d" % (RUN_ANSWERS + len(RUN_ROWS) + len(PARTS)), "low")
    sheet.put("A1", "What the service answers, whole: the sheets Checks and Cautions read it.", "quiet")
    for title, row in ANSWERS.items():
        sheet.put("A%d" % row, title)
        sheet.put("B%d" % row, text_of({"Balance": "Balance.$L$3", "Endurance": "Endurance.$I$2"}[title]), "grey")
    for index, run in enumerate(RUN_ROWS):
        sheet.put("A%d" % (RUN_ANSWERS + index), "run %d of the sheet Wires" % (index + 1))
        asked_for = text_of("Wires.$S$%d" % run)[1:]
        sheet.put("B%d" % (RUN_ANSWERS + index), '=IF(Wires.$S$%d="";"";%s)' % (run, asked_for), "grey")
    for name, row in PART_ANSWERS.items():
        sheet.put("A%d" % row, name)
        sheet.put("B%d" % row, text_of("%s.$N$3" % name), "grey")
    return sheet


def notes():
    sheet = Sheet("Notes", [26.0], "A1:A29")
    sheet.put("A1", "Notes", "title")
    row = 2
    for head, text in NOTES:
        row += 2 if head else 1
        sheet.put("A%d" % row, head or text, "heading" if head else "plain")
    return sheet


def cell_style(name, parent="plain", data=None, cell="", text="", paragraph=""):
    """A style of cells, by what differs from its parent."""
    return '<style:style style:name="%s" style:family="table-cell"%s%s>%s%s%s</style:style>' % (
        name,
        ' style:parent-style-name="%s"' % parent if parent else "",
        ' style:data-style-name="%s"' % data if data else "",
        "<style:table-cell-properties %s/>" % cell if cell else "",
        "<style:paragraph-properties %s/>" % paragraph if paragraph else "",
        "<style:text-properties %s/>" % text if text else "",
    )


def styles(widths):
    for name, places in (("whole", 0), ("tenth", 1), ("hundredth", 2)):
        yield (
            '<number:number-style style:name="number-%s"><number:number number:decimal-places="%d"'
            ' number:min-decimal-places="%d" number:min-integer-digits="1"/></number:number-style>' % (name, places, places)
        )
    yield cell_style(
        "plain", None, cell='style:vertical-align="middle" fo:padding="0.08cm"', text='fo:font-family="Liberation Sans" fo:font-size="10pt"'
    )
    yield cell_style("title", text='fo:font-size="16pt" fo:font-weight="bold"')
    yield cell_style("quiet", text='fo:color="#555555"')
    yield cell_style("aid", text='fo:font-weight="bold"')
    yield cell_style("unit", text='fo:color="#555555"')
    yield cell_style("words", cell='fo:wrap-option="wrap" style:vertical-align="top"')
    yield cell_style("grey", cell='fo:wrap-option="no-wrap"', text='fo:color="#999999" fo:font-size="7pt"')
    yield cell_style(
        "heading",
        cell='fo:border-bottom="0.75pt solid #333333" fo:wrap-option="wrap" style:vertical-align="bottom"',
        text='fo:font-weight="bold"',
    )
    line = 'fo:background-color="#e8f1fb" fo:border="0.5pt solid #b7cfe8"'
    yield cell_style("input", cell=line, text='fo:color="#0b3d91"', paragraph='fo:text-align="end"')
    yield cell_style("inputtext", "input", paragraph='fo:text-align="start"')
    yield cell_style("linked", "input", "number-tenth", cell='fo:background-color="#f4f8fc"')
    for name in ("whole", "tenth", "hundredth"):
        yield cell_style(name, data="number-" + name, text='fo:font-weight="bold"', paragraph='fo:text-align="end"')
    yield cell_style("text", text='fo:font-weight="bold"', paragraph='fo:text-align="end"')
    yield cell_style("verdict", text='fo:font-weight="bold"', paragraph='fo:text-align="center"')
    yield cell_style("outcome", paragraph='fo:text-align="center"')
    yield cell_style("open", "outcome", text='fo:color="#555555" fo:font-style="italic"')
    yield cell_style("fit", "verdict", cell='fo:background-color="#d9f0dd"', text='fo:color="#145523"')
    yield cell_style("attention", "verdict", cell='fo:background-color="#fdebc8"', text='fo:color="#6b4300"')
    yield cell_style("stop", "verdict", cell='fo:background-color="#f9d6d5"', text='fo:color="#8a1512"')


def automatic_styles(widths):
    for width in widths:
        yield (
            '<style:style style:name="width%s" style:family="table-column"><style:table-column-properties'
            ' style:column-width="%scm"/></style:style>' % (str(width).replace(".", "_"), width)
        )
    yield (
        '<style:style style:name="row" style:family="table-row"><style:table-row-properties'
        ' style:use-optimal-row-height="true"/></style:style>'
    )
    yield (
        '<style:style style:name="low" style:family="table-row"><style:table-row-properties style:row-height="0.5cm"'
        ' style:use-optimal-row-height="false"/></style:style>'
    )
    yield (
        '<style:style style:name="sheet" style:family="table" style:master-page-name="Page"><style:table-properties'
        ' table:display="true"/></style:style>'
    )
    yield (
        '<style:page-layout style:name="Landscape"><style:page-layout-properties fo:page-width="29.7cm"'
        ' fo:page-height="21cm" style:print-orientation="landscape" fo:margin="1cm" style:scale-to-X="1"'
        ' style:scale-to-Y="1"/></style:page-layout>'
    )


def validations():
    yield "<table:content-validations>"
    for name, values in (("insulations", INSULATIONS), ("chemistries", CHEMISTRIES)):
        listed = ";".join('"%s"' % value for value in values)
        yield '<table:content-validation table:name="%s" table:condition=%s table:allow-empty-cell="true"/>' % (
            name,
            quoteattr("of:cell-content-is-in-list(%s)" % listed),
        )
    yield "</table:content-validations>"


SPACES = {
    "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
    "style": "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
    "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
    "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
    "number": "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0",
    "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
    "of": "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
    "calcext": "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0",
}


def document():
    sheets = [balance(), more_items(), wires(), endurance(), *map(part, PARTS), checks(), cautions(), answers(), notes()]
    widths = sorted({width for sheet in sheets for width in sheet.widths})
    yield '<?xml version="1.0" encoding="UTF-8"?>'
    spaces = " ".join('xmlns:%s="%s"' % space for space in SPACES.items())
    yield (
        '<office:document %s office:version="1.3"'
        ' office:mimetype="application/vnd.oasis.opendocument.spreadsheet">' % spaces
    )
    yield "<office:styles>"
    yield from styles(widths)
    yield "</office:styles>"
    yield "<office:automatic-styles>"
    yield from automatic_styles(widths)
    yield "</office:automatic-styles>"
    yield (
        '<office:master-styles><style:master-page style:name="Page" style:page-layout-name="Landscape"/>'
        "</office:master-styles>"
    )
    yield "<office:body><office:spreadsheet>"
    yield from validations()
    for sheet in sheets:
        yield from sheet.table()
    yield "</office:spreadsheet></office:body></office:document>"


if __name__ == "__main__":
    target = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).with_name("aircraft.fods")
    target.write_text("\n".join(document()) + "\n", encoding="utf-8")
