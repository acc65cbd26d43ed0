"""What a framer types is read exactly or refused at the character that is wrong."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import (
    NM_PER_FOOT,
    NM_PER_HUNDREDTH_MM,
    NM_PER_INCH,
    NM_PER_SIXTYFOURTH,
    ZERO,
    Length,
)
from benchmate.measure.reading import LengthError, Unit, lent_unit, read_length
from benchmate.measure.tolerance import LONGEST_TIMBER, TAPE_DENOMINATORS

LONG = Length.feet(7, 11, 1, 2)
PRIME = "\N{PRIME}"
CURLY = "\N{RIGHT SINGLE QUOTATION MARK}"
MINUS = "\N{MINUS SIGN}"
THREE = "\N{ARABIC-INDIC DIGIT THREE}"
METRIC = 'write a decimal, or mark inches with "'
OTHER = "write it with 0-9 . / - and a unit: ' \" ft in mm cm m"


def refusal(text: str, **options: object) -> LengthError:
    """The error that refuses a text."""
    with pytest.raises(LengthError) as caught:
        read_length(text, **options)  # type: ignore[arg-type]
    return caught.value


def attempt(text: str) -> Length | LengthError:
    """The length a text reads as, or the error that refuses it."""
    try:
        return read_length(text, negative=True)
    except LengthError as error:
        return error


@pytest.mark.parametrize(
    ("text", "length"),
    [
        *((text, Length.inches(4, 3, 4)) for text in ("4-3/4", "4 3/4", '4-3/4"', "4¾", "4-¾")),
        *((text, Length.inches(4, 3, 4)) for text in ("4 ¾ in", "4.75", "4 3/4 inches", "4 6/8")),
        *((text, Length.feet(7)) for text in ("7'", "7 ft", "7feet", "7 foot", "7.0'", "84")),
        *((text, Length.feet(7, 11)) for text in ("7' 11\"", "7'11", "7ft 11in", "7'-11")),
        *((text, LONG) for text in ("7'-11 1/2\"", "7' 11-1/2", "7' 11½", "7 FT 11.5 IN")),
        *((text, LONG) for text in (f"7{PRIME} 11-1/2″", f"7{CURLY} 11 1/2”", "7' 11 1/2“")),
        ("7' 1/2", Length.feet(7, 0, 1, 2)),
        ("7'-1/2", Length.feet(7, 0, 1, 2)),
        ("7' 0\"", Length.feet(7)),
        ("95", Length.inches(95)),
        ("95.5", Length.inches(95, 1, 2)),
        (".5", Length.inches(0, 1, 2)),
        ("¾", Length.inches(0, 3, 4)),
        ('⅞"', Length.inches(0, 7, 8)),
        ("3\N{FRACTION SLASH}4", Length.inches(0, 3, 4)),
        ("5/4", Length.inches(1, 1, 4)),
        ("7.5 ft", Length.feet(7, 6)),
        ("0", ZERO),
        ("0/4", ZERO),
        ("  6\t", Length.inches(6)),
        ("190 mm", Length.mm(190)),
        ("190mm", Length.mm(190)),
        ("190.25 mm", Length.hundredths_mm(19_025)),
        ("0.396875 mm", Length.inches(0, 1, 64)),
        ("19 cm", Length.mm(190)),
        ("1.9 m", Length.mm(1900)),
        ("1.90001 m", Length.hundredths_mm(190_001)),
        ("0.1", Length.hundredths_mm(254)),
        ("200'", LONGEST_TIMBER),
    ],
)
def test_what_a_framer_types(text: str, length: Length) -> None:
    """Every usual spelling is read as the very length it says."""
    assert read_length(text) == length


def test_sixteenths_from_a_decimal() -> None:
    """0.3125 is 5/16" (trade.md section 8, question 15)."""
    assert read_length("0.3125") == Length.inches(0, 5, 16)


def test_decimal_feet_that_are_exact() -> None:
    """42.6 ft is 511.2" and not 42' 6" (trade.md 7.6 row 4)."""
    assert read_length("42.6 ft").nm == 5112 * NM_PER_INCH // 10
    assert read_length("42.6 ft") != Length.feet(42, 6)


def test_decimal_feet_that_are_not() -> None:
    """15.233 ft lies on no tape; the sixty-fourths beside it are named (trade.md 7.6 row 5)."""
    error = refusal("15.233 ft")
    assert error.problem == 'finer than 1/64" or 0.01 mm'
    assert error.remedy == "write 15' 2-25/32\" or 15' 2-51/64\""
    low, high = read_length("15' 2-25/32\""), read_length("15' 2-51/64\"")
    assert low.nm < 15_233 * NM_PER_FOOT // 1000 < high.nm
    assert high - low == Length(NM_PER_SIXTYFOURTH)


@pytest.mark.parametrize(
    ("text", "column", "problem", "remedy"),
    [
        ("", 0, "there is no length", 'write one, as 4-3/4" or 7\' 11"'),
        ("   ", 0, "there is no length", 'write one, as 4-3/4" or 7\' 11"'),
        ("abc", 0, "`abc` is not a unit", "use ' ft \" in mm cm or m"),
        ("nan", 0, "`nan` is not a unit", "use ' ft \" in mm cm or m"),
        ("inf", 0, "`inf` is not a unit", "use ' ft \" in mm cm or m"),
        ("1e3", 1, "`e` is not a unit", "use ' ft \" in mm cm or m"),
        ("'", 0, "the unit has no number", 'put the number first, as 6"'),
        ("mm", 0, "the unit has no number", 'put the number first, as 6"'),
        ("/4", 0, "a number belongs here", 'write one, as 4-3/4"'),
        ("7'11'", 4, "feet are given twice", 'mark inches with " or in'),
        ("7''", 2, "the length ends before this", "leave the rest out"),
        ("7' 190 mm", 7, "feet and a metric unit in one length", "keep to one"),
        ('6" 10 mm', 3, "inches and a metric unit in one length", "keep to one"),
        ('10 mm 6"', 6, "inches and a metric unit in one length", "keep to one"),
        ("6\" 7'", 3, "the length ends before this", "leave the rest out"),
        ("7' 6\" 2", 6, "the length ends before this", "leave the rest out"),
        ("4 3", 2, "the length ends before this", "leave the rest out"),
        ("4-3/4-1", 5, "the length ends before this", "leave the rest out"),
        ("95.5 3/4", 5, "the length ends before this", "leave the rest out"),
        ("1.2.3", 3, "the length ends before this", "leave the rest out"),
        ("½/2", 1, "the length ends before this", "leave the rest out"),
        ("12 mm-", 5, "the length ends before this", "leave the rest out"),
        ("3/0", 2, "nothing divides by 0", "write a tape fraction, as 3/4"),
        ("7' 3/0", 5, "nothing divides by 0", "write a tape fraction, as 3/4"),
        ("3 / 4", 2, "this is not a fraction", "write two whole numbers, as 3/4"),
        ("3/ 4", 1, "this is not a fraction", "write two whole numbers, as 3/4"),
        ("3.5/4", 3, "this is not a fraction", "write two whole numbers, as 3/4"),
        ("3/4.5", 1, "this is not a fraction", "write two whole numbers, as 3/4"),
        ("3/", 1, "this is not a fraction", "write two whole numbers, as 3/4"),
        ("7-11", 2, "a fraction belongs here", "write one, as 3/4"),
        ("7-", 1, "the hyphen joins nothing to the whole number", "leave it out"),
        ("7'-", 2, "the hyphen joins nothing to the feet", "leave it out"),
        ("4-5/4", 2, "the fraction is an inch or more", "carry it into the whole number"),
        ("4 4/4", 2, "the fraction is an inch or more", "carry it into the whole number"),
        ('1/3"', 2, "1/3 is not a tape fraction", 'write 21/64" or 11/32"'),
        ("4-1/3", 4, "1/3 is not a tape fraction", 'write 4-21/64" or 4-11/32"'),
        ("7' 4⅔", 4, "2/3 is not a tape fraction", 'write 4-21/32" or 4-43/64"'),
        ("1/128", 2, "1/128 is not a tape fraction", 'write 0" or 1/64"'),
        ("3/1", 2, "3/1 is not a tape fraction", 'write 3"'),
        ("4-3/12", 4, "3/12 is not a tape fraction", 'write 4-1/4"'),
        ("0.33", 0, 'finer than 1/64" or 0.01 mm', 'write 21/64" or 11/32"'),
        ("190.255 mm", 0, 'finer than 1/64" or 0.01 mm', "write 190.25 mm or 190.26 mm"),
        ("1.900005 m", 0, 'finer than 1/64" or 0.01 mm', "write 1900.00 mm or 1900.01 mm"),
        ("4-3/4 mm", 2, "a metric length takes no fraction", METRIC),
        ("½ cm", 0, "a metric length takes no fraction", METRIC),
        ("7-1/2'", 2, "feet take no fraction", "write feet and inches, as 7' 6\""),
        ("7.5' 3", 5, "inches after a decimal of feet", "write whole feet, then inches"),
        ("7' 13\"", 3, "a foot or more of inches after feet", "write 8' 1\""),
        ("7' 12", 3, "a foot or more of inches after feet", "write 8' 0\""),
        ("7' 12.1", 3, "a foot or more of inches after feet", "write 2440.94 mm"),
        ("-4", 0, "a length here is not below zero", "leave the minus out"),
        ("200' 1/64", 0, "more than 200' 0\"", "check the figure and its unit"),
        (" 61 m", 1, "more than 200' 0\"", "check the figure and its unit"),
        ("4,75", 1, "`,` has no place in a length", "write the decimal with a point"),
        (THREE, 0, f"`{THREE}` has no place in a length", OTHER),
        ("4²", 1, "`²` has no place in a length", OTHER),
        ("1" * 61, 60, "longer than 60 characters", "write one length"),
    ],
)
def test_what_is_refused(text: str, column: int, problem: str, remedy: str) -> None:
    """Each refusal names the column, what is wrong and what to write instead."""
    error = refusal(text)
    assert (error.column, error.problem, error.remedy) == (column, problem, remedy)
    assert error.text == text


@pytest.mark.parametrize(
    ("text", "column"),
    [("4 - 3/4", 2), ("4- 3/4", 1), ("4 -3/4", 2), ("7' - 11\"", 3), ('6" - 2', 3)],
)
def test_spaces_round_a_hyphen_subtract(text: str, column: int) -> None:
    """A length never subtracts, so the spaced hyphen of a sum is refused and explained."""
    error = refusal(text)
    assert error.column == column
    assert str(error) == (
        "in a length the hyphen joins without spaces; close it up; spaces round a hyphen "
        "subtract, which only a sum does"
    )


@pytest.mark.parametrize("text", ["42' 7-3/16\"+", "6+3"])
def test_a_rounded_figure_is_not_read_as_exact(text: str) -> None:
    """The + of a shown figure is refused, so that rounding never creeps into a length."""
    assert "mark of a rounded figure" in refusal(text).remedy


@pytest.mark.parametrize(
    ("text", "length"),
    [
        ("190", Length.mm(190)),
        ("190.25", Length.hundredths_mm(19_025)),
        ('7-1/2"', Length.inches(7, 1, 2)),
        ("7' 11", Length.feet(7, 11)),
    ],
)
def test_a_bare_number_takes_the_unit_of_its_field(text: str, length: Length) -> None:
    """In a metric field a bare number is millimetres; inches after feet stay inches."""
    assert read_length(text, bare=Unit.MM) == length


def test_a_bare_fraction_in_a_metric_field() -> None:
    """A tape fraction without its inch mark is not guessed at among millimetres."""
    assert refusal("4-3/4", bare=Unit.MM).column == 2


@pytest.mark.parametrize("minus", ["-", MINUS])
def test_below_zero_where_a_field_allows_it(minus: str) -> None:
    """The minus, plain or typographic, covers the whole length."""
    assert read_length(f"{minus}7' 11-1/2\"", negative=True) == -LONG
    assert read_length(f"{minus}0", negative=True) == ZERO


@pytest.mark.parametrize(
    ("text", "column", "problem"),
    [
        ("- 4", 0, "the minus stands apart from its number"),
        ("--4", 1, "a number belongs here"),
        ("-", 1, "a number belongs here"),
        ("4-", 1, "the hyphen joins nothing to the whole number"),
        ("-200' 1", 0, "more than 200' 0\""),
    ],
)
def test_a_minus_out_of_place(text: str, column: int, problem: str) -> None:
    """One minus, against its number, and the limit holds on both sides of zero."""
    error = refusal(text, negative=True)
    assert (error.column, error.problem) == (column, problem)


@pytest.mark.parametrize(
    ("text", "remedy"),
    [
        ("-1/3", 'write -21/64" or -11/32"'),
        ("-0.001 mm", "write 0.00 mm or -0.01 mm"),
        ("-7' 12", "write -8' 0\""),
    ],
)
def test_remedies_keep_the_sign(text: str, remedy: str) -> None:
    """What is offered instead lies on the same side of zero, the nearer to it first."""
    assert refusal(text, negative=True).remedy == remedy


def test_the_most_is_the_field_s_own() -> None:
    """A field sets its own limit, which may be reached and is named when it is passed."""
    most = Length.hundredths_mm(25)
    assert read_length("0.25 mm", most=most) == most
    assert refusal("0.26 mm", most=most).problem == "more than 0.25 mm"


def test_stored_values_may_be_finer() -> None:
    """A stored value reads down to a nanometre, and no finer."""
    assert read_length("0.000001 mm", exact=True) == Length(1)
    assert refusal("0.0000001 mm", exact=True).problem == "finer than a nanometre"
    assert refusal("1/3", exact=True).column == 2


@pytest.mark.parametrize(
    ("text", "unit"),
    [("6", ""), ('6"', '"'), ("6 inches", "inches"), ("1'", '"'), ("1' 2", '"'), ("19 cm", "cm")],
)
def test_the_unit_a_length_lends(text: str, unit: str) -> None:
    """A length lends its last unit, but feet lend inches."""
    assert lent_unit(text) == unit


@given(st.integers(-(10**18), 10**18).map(Length))
def test_exact_text_reads_back(length: Length) -> None:
    """Law: read(exact_text(x)) == x for every length, to the nanometre."""
    most = Length(10**18)
    assert read_length(length.exact_text(), exact=True, negative=True, most=most) == length


@given(st.integers(0, 199), st.integers(0, 11), st.sampled_from(TAPE_DENOMINATORS), st.data())
def test_feet_inches_and_a_fraction_add_up(
    feet: int, inches: int, den: int, data: st.DataObject
) -> None:
    """Law: the parts of a length add up, however they are joined."""
    num = data.draw(st.integers(0, den - 1))
    join, gap = data.draw(st.sampled_from("- ")), data.draw(st.sampled_from(["", " ", "-"]))
    text = f"{feet}'{gap}{inches}{join}{num}/{den}\""
    assert read_length(text) == Length.feet(feet, inches, num, den)


@given(st.integers(0, 10**6), st.integers(0, 6))
def test_decimals_are_exact_or_refused(digits: int, places: int) -> None:
    """Law: a decimal inch reads as its own value if that lies on a tape, else not at all."""
    text = f"{digits:0{places + 1}}"
    text = f"{text[:-places]}.{text[-places:]}" if places else text
    nm = Fraction(digits, 10**places) * NM_PER_INCH
    if nm > LONGEST_TIMBER.nm or (nm % NM_PER_SIXTYFOURTH and nm % NM_PER_HUNDREDTH_MM):
        refusal(text)
    else:
        assert read_length(text).nm == nm


@given(st.text(alphabet="0123456789./- '\"¾⅓ftincm,x\t\x1b", max_size=14))
def test_any_text_is_read_or_refused(text: str) -> None:
    """Law: any text gives a length within the limit or a LengthError with a column inside it."""
    outcome = attempt(text)
    if isinstance(outcome, Length):
        assert abs(outcome) <= LONGEST_TIMBER
    else:
        assert 0 <= outcome.column <= len(text)
        assert "\x1b" not in str(outcome) + outcome.excerpt()
