"""Opens a spreadsheet as a person does who lets it fetch, and prints what the cells then show, as JSON.

    recalculate.py SPREADSHEET [Sheet.A1=VALUE ...] [--pdf FILE]

Each VALUE is entered, in turn, as if typed. It needs LibreOffice and the Python that its package brings the
module uno for. The office runs without a window, with a profile of its own in which the spreadsheet's folder
is trusted: without that, or when opened for conversion, it fetches nothing.
"""

import json
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.table.CellContentType import EMPTY

FULL_UPDATE = 3  # com.sun.star.document.UpdateDocMode
LONGEST_START_S = 60

TRUSTED = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Common/Security/Scripting"><prop oor:name="SecureURL" oor:op="fuse">
<value><it>%s</it></value></prop></item>
</oor:items>
"""


def property_of(name, value):
    held = PropertyValue()
    held.Name, held.Value = name, value
    return held


def start(profile, folder):
    """An office of our own, and the pipe that it listens on."""
    (profile / "user").mkdir()
    (profile / "user" / "registrymodifications.xcu").write_text(TRUSTED % folder.as_uri())
    pipe = "recalculate" + profile.name
    office = subprocess.Popen(
        [
            "soffice",
            "-env:UserInstallation=" + profile.as_uri(),
            "--headless",
            "--norestore",
            "--nologo",
            "--accept=pipe,name=%s;urp;" % pipe,
        ],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    return office, pipe


def desktop_at(pipe):
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    latest = time.monotonic() + LONGEST_START_S
    while True:
        try:
            remote = resolver.resolve("uno:pipe,name=%s;urp;StarOffice.ComponentContext" % pipe)
            return remote.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", remote)
        except NoConnectException:
            if time.monotonic() > latest:
                raise
            time.sleep(0.2)


def shown(document):
    """Every cell that holds something, by sheet and address."""
    sheets = {}
    for sheet in document.Sheets:
        cursor = sheet.createCursor()
        cursor.gotoEndOfUsedArea(False)
        cells = sheets.setdefault(sheet.Name, {})
        for row in range(cursor.RangeAddress.EndRow + 1):
            for column in range(cursor.RangeAddress.EndColumn + 1):
                cell = sheet.getCellByPosition(column, row)
                if cell.Type != EMPTY:
                    address = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[column] + str(row + 1)
                    cells[address] = {"text": cell.String, "value": cell.Value, "error": cell.getError()}
    return sheets


def main(spreadsheet, *arguments):
    entries, pdf = list(arguments), None
    if "--pdf" in entries:
        at = entries.index("--pdf")
        pdf = Path(entries[at + 1]).absolute()
        del entries[at : at + 2]
    path = Path(spreadsheet).resolve()
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        office, pipe = start(Path(folder), path.parent)
        try:
            desktop = desktop_at(pipe)
            options = (property_of("Hidden", True), property_of("UpdateDocMode", uno.Any("short", FULL_UPDATE)))
            document = desktop.loadComponentFromURL(path.as_uri(), "_blank", 0, options)
            for entry in entries:
                place, value = entry.split("=", 1)
                sheet, address = place.split(".")
                document.Sheets.getByName(sheet).getCellRangeByName(address).setFormula(value)
            document.calculateAll()
            print(json.dumps(shown(document), ensure_ascii=False))
            if pdf:
                document.storeToURL(pdf.as_uri(), (property_of("FilterName", "calc_pdf_Export"),))
            document.close(True)
            desktop.terminate()
            office.wait(30)
        finally:
            if office.poll() is None:
                office.kill()


if __name__ == "__main__":
    main(*sys.argv[1:])
