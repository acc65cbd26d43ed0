"""A printable page: one style for A4 and Letter, black ink, nothing fetched and nothing run."""

from html import escape

from benchmate.sheets.names import page_start
from benchmate.sheets.sheet import CAUTION, Issue
from benchmate.sheets.words import FIGURE

PAPERS = {"": "", "a4": "A4", "letter": "letter"}
"""The papers a sheet may be set for; with none, it takes the paper that the printer holds."""

_STYLE = """\
@page{%(size)smargin:5.5mm 7mm}
*{box-sizing:border-box}
html{color:#000;background:#fff;
font:9pt/1 "Liberation Sans Narrow","Arial Narrow",Arial,Helvetica,sans-serif}
body{margin:0}
p,h2{margin:0}
table{border-collapse:collapse;width:100%%}
th,td{padding:0;text-align:left;vertical-align:top;font-weight:normal}
.sheet{break-after:page}
.sheet:last-child{break-after:auto}
thead,tfoot{break-inside:avoid}
.title{display:flex;justify-content:space-between;align-items:baseline;gap:4mm;
border-bottom:.5mm solid #000;margin-bottom:.4mm;font-size:11pt;line-height:1}
.title b{font-size:13pt}
.foot{border-top:.3mm solid #000;margin-top:.4mm;padding-bottom:.7mm}
.head{display:flex;justify-content:space-between;gap:3mm}
.long{font-size:12pt;font-weight:bold}
.alarm{border:.6mm solid #000;padding:.4mm 1mm;margin:.4mm 0}
.ends{display:flex;flex:none}
svg{display:block;overflow:visible;fill:none;stroke:#000;stroke-linecap:butt}
svg text{fill:#000;stroke:none;font-size:3.175px}
svg .name{font-weight:bold}
.net{width:196mm}
.end{height:21mm;margin-bottom:-3mm}
.cols{columns:2;column-gap:2.6mm;orphans:1;widows:1}
h2{font-size:10pt;line-height:1;border-top:.2mm solid #000;margin-top:.1mm;break-after:avoid}
h2 span{font-size:9pt;font-weight:normal}
.row{display:grid;grid-template-columns:3.8mm minmax(14.2mm,max-content) 1fr;column-gap:.4mm;
break-inside:avoid}
.row>b{font-size:11pt;line-height:.84}
.do b{font-size:10pt;line-height:.8}
i{display:inline-block;width:2.7mm;height:2.7mm;border:.25mm solid #000;font:bold 8pt/2.1mm Arial,
Helvetica,sans-serif;text-align:center;vertical-align:-.3mm}
.do i{margin-right:.7mm}
.do{margin-right:1.2mm}
.again{border:.3mm solid #000;padding:0 .5mm}
var{font-style:normal;white-space:nowrap}
.k{white-space:nowrap}
s{display:inline-block;width:10mm;border-bottom:.2mm solid #000}
.details{padding-left:2mm}
.notes{border-top:.2mm solid #000}
sup{font-size:7.5pt;line-height:0;font-weight:bold}
.like{font-size:10.5pt}
.sched{font-size:10.5pt;width:99.5%%}
.sched td,.sched th{border:.2mm solid #000;padding:.4mm .8mm}
.sched th{font-weight:bold}
.sched .bare,.sched tfoot td{border:0;padding:0}
.sched tr{break-inside:avoid}
"""
"""Widths are those of both papers; nothing is smaller than 9 pt but the reference marks."""


def said(text: str) -> str:
    """A text made safe to stand in a page, with no figure broken over two lines."""
    return FIGURE.sub(r"<var>\g<0></var>", escape(text, quote=False))


def foot(issue: Issue) -> str:
    """The foot of every page: how old its figures are, and what they are not."""
    return f'<div class="foot">{said(issue.words)}<br>{said(CAUTION)}</div>'


def page_head(title: str, paper: str = "") -> str:
    """A page as far as its body. Raises KeyError for a paper there is no page for."""
    size = f"size:{PAPERS[paper]};" if PAPERS[paper] else ""
    return (
        f'{page_start()}<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        f"<title>{escape(title)}</title>\n<style>\n{_STYLE % {'size': size}}</style>\n"
        "</head>\n<body>\n"
    )


PAGE_TAIL = "</body>\n</html>\n"
"""What ends every page."""


def page(title: str, body: str, paper: str = "") -> str:
    """A whole page. Raises KeyError for a paper there is no page for."""
    return f"{page_head(title, paper)}{body}{PAGE_TAIL}"
