using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed;

/// <summary>What a person reads when something typed cannot be taken as it stands. A question ends in a question mark and names every reading.</summary>
public static class TypedSentences
{
    /// <summary>Digits of two scripts in one line.</summary>
    public const string MixedDigits = "The digits come from more than one script.";

    /// <summary>Nothing was typed.</summary>
    public static Fault Empty(string where) => new(where, "a number", "A number is missing.");

    /// <summary>Nothing was typed for a mark.</summary>
    public static Fault EmptyMark(string where) => new(where, "a mark", "A mark is missing; type ? for a character that cannot be read.");

    /// <summary>A word among colour bands that names none.</summary>
    public static Fault NoColour(string word) => new(
        "bands", "colours by name (brown) or by two letters (BN), either as red|orange, ? for one that cannot be told", $"\"{word}\" is no colour of a band: brown or BN, red|orange for either, ? for one that cannot be told.");

    /// <summary>No bands, or more than any code has.</summary>
    public static Fault BandsCount(int bands, int most) => new("bands", $"one to {most} bands", bands == 0 ? "No band is named." : $"{bands} bands are more than any code has; at most {most} are read.");

    /// <summary>Too many bands that cannot be told.</summary>
    public static Fault BandsOpen(int open, int most) => new("bands", $"at most {most} bands open", $"{open} bands that cannot be told leave everything open; at most {most} may be.");

    /// <summary>A text that no rule of value codes reads.</summary>
    public static Fault NoCode(string text) => new(text, "a value code such as 4R7, 473, 01C or 2A474J, or colour bands", $"No rule for value codes reads \"{text}\".");

    /// <summary>Colours of which no code is made.</summary>
    public static Fault NoBandReading(string text) => new(text, "3 to 6 bands that begin with a digit from one end, or one black band", $"\"{text}\" is no code from either end: 3 to 6 bands, first two or three digits.");

    /// <summary>Too much was typed.</summary>
    public static Fault TooLong(string where, int length, int most) =>
        new(where, $"at most {most} characters", $"{length} characters are too many here; at most {most} are read.");

    /// <summary>A control character inside a mark.</summary>
    public static Fault ControlCharacter(string where, char c) =>
        new(where, "one line of visible characters", $"A mark is one line; U+{(int)c:X4} does not belong in it.");

    /// <summary>No digit where a number should begin.</summary>
    public static Fault NoNumber(string where, string text) => IsNotFinite(text)
        ? new(where, "a finite number", $"\"{text.Trim()}\" is not a number that can be computed with.")
        : new(where, "a number", $"\"{text.Trim()}\" does not begin with a number.");

    /// <summary>More than one sign.</summary>
    public static Fault TwoSigns(string where, string text) => new(where, "one sign", $"\"{text.Trim()}\" has more than one sign.");

    /// <summary>Too many digits for any measurement.</summary>
    public static Fault TooManyDigits(string where, int most) => new(where, $"at most {most} digits", $"The number has more than {most} digits.");

    /// <summary>Too large, or too small to differ from zero.</summary>
    public static Fault OutOfRange(string where, string text) =>
        new(where, "a number between 1e-300 and 1e300", $"\"{text}\" is too large or too small to compute with.");

    /// <summary>Something stands behind the number.</summary>
    public static Fault AfterNumber(string where, string rest) => new(where, "nothing behind the number", $"\"{rest}\" behind the number cannot be read.");

    /// <summary>The question of thousands and decimals.</summary>
    public static Fault TwoReadings(string where, string typed, string asDecimal, string asThousands) =>
        new(where, $"{asDecimal} or {asThousands}", $"Is \"{typed}\" {Short(asDecimal)} or {asThousands}?");

    /// <summary>The question of hexadecimal digits and ampere-hours.</summary>
    public static Fault HexOrUnit(string where, string typed) =>
        new(where, $"0x{typed[..^1].ToUpperInvariant()}, or a number with a unit and a blank between",
            $"Is \"{typed}\" the hexadecimal number 0x{typed[..^1].ToUpperInvariant()} ({Hex(typed[..^1])}), or a number with the unit {typed.TrimStart('0', '1', '2', '3', '4', '5', '6', '7', '8', '9')}?");

    /// <summary>Marks that contradict one another.</summary>
    public static Fault MixedMarks(string where, string typed) =>
        new(where, "one decimal mark", $"The points and commas in \"{typed}\" contradict one another.");

    /// <summary>Groups of digits that are not of three.</summary>
    public static Fault BadGroups(string where, string typed) => new(where, "groups of three digits", $"The digit groups in \"{typed}\" are not of three.");

    /// <summary>A letter that looks like a digit.</summary>
    public static Fault LetterForDigit(string where, string typed, char letter) =>
        new(where, "digits", $"\"{typed}\" has the letter {letter} among its digits. Is it the digit {(letter == 'l' ? '1' : '0')}?");

    /// <summary>A letter in place of the decimal mark where nobody writes it.</summary>
    public static Fault LetterForm(string where, string typed, Unit expected) =>
        new(where, $"a value in {expected.Symbol}", $"\"{typed}\" is written as resistors and capacitors are; here {Dimensions.Name(expected.Dimension)} is wanted, for example in {expected.Symbol}.");

    /// <summary>The small m behind a resistor's or capacitor's value.</summary>
    public static Fault MilliOrMega(string where, string typed, Unit expected) =>
        new(where, "m or M with the unit behind it", $"Is the m in \"{typed}\" milli or mega? Write the unit, for example {SiPrefix.Symbol(-3)}{Root(expected)} or {SiPrefix.Symbol(6)}{Root(expected)}?");

    /// <summary>A dash between two numbers.</summary>
    public static Fault DashOrRange(string where, string typed) =>
        new(where, "3.5..4.2 for a range", $"Is \"{typed}\" a range? Then write two dots between its ends: 3.5..4.2?");

    /// <summary>Three dots.</summary>
    public static Fault ThreeDots(string where, string typed) => new(where, "two dots", $"\"{typed}\" has three dots; a range has two: 3.5..4.2.");

    /// <summary>A range with the wrong number of parts.</summary>
    public static Fault RangeForm(string where, string typed) =>
        new(where, "3.5..4.2 or 3.5..3.7..4.2", $"\"{typed}\" is not a range: write 3.5..4.2, or 3.5..3.7..4.2 with the most likely value in the middle.");

    /// <summary>A range whose ends fall.</summary>
    public static Fault RangeReversed(string where, string typed) => new(where, "rising values", $"The values of the range \"{typed}\" do not rise.");

    /// <summary>More than one ±.</summary>
    public static Fault OnePlusMinus(string where, string typed) => new(where, "one ±", $"\"{typed}\" has more than one ±.");

    /// <summary>± without a value before it.</summary>
    public static Fault NoValueBefore(string where, string typed) => new(where, "3.7±0.1", $"The value before the ± in \"{typed}\" is missing.");

    /// <summary>A negative uncertainty.</summary>
    public static Fault NegativeUncertainty(string where, string typed) => new(where, "zero or more", $"The uncertainty in \"{typed}\" is negative.");

    /// <summary>Per cent of the value, or points?</summary>
    public static Fault PercentOfWhat(string where, string typed) =>
        new(where, "an uncertainty in the unit of the value", $"Is the uncertainty in \"{typed}\" a part of the value, or is the value in that unit too? Write both units?");

    /// <summary>A percentage of a temperature.</summary>
    public static Fault PercentOfTemperature(string where, string typed) =>
        new(where, "an uncertainty in K or °C", $"A percentage of a temperature (\"{typed}\") has no meaning: give the uncertainty in K or °C.");

    /// <summary>Brackets that are not the shorthand of uncertainty.</summary>
    public static Fault Brackets(string where, string typed) =>
        new(where, "3.7(1)", $"The brackets in \"{typed}\" cannot be read: 3.7(1) means 3.7 with a standard uncertainty of 0.1.");

    /// <summary>One value is wanted, a spread was typed.</summary>
    public static Fault OneValueOnly(string where, string typed) => new(where, "one value", $"\"{typed.Trim()}\" has an uncertainty or a range; one value is wanted here.");

    /// <summary>A value in front of which stands about, less or more; null when it does not.</summary>
    public static Fault? Hedged(string where, string text) => text[0] switch
    {
        '~' or '\u2248' or '\u223C' => new(where, "3.7±0.1", $"\"{text}\" says about: how far off can it be? Write 3.7±0.1 or 3.5..4.2?"),
        '<' or '>' or '\u2264' or '\u2265' => new(where, "3.5..4.2", $"\"{text}\" says one end only: what is the other? Write a range, 3.5..4.2?"),
        _ => null,
    };

    /// <summary>Remark: letters of another alphabet taken for Latin ones.</summary>
    public static string LookAlikeLetters(IReadOnlyList<char> letters) =>
        "Taken for Latin characters: " + string.Join(", ", letters.Distinct().Select(c => $"{c} (U+{(int)c:X4})")) + ".";

    /// <summary>Remark: characters without width left out.</summary>
    public static string InvisibleDropped(int count) => count == 1 ? "One invisible character was left out." : $"{count.ToString(CultureInfo.InvariantCulture)} invisible characters were left out.";

    /// <summary>An address that is none.</summary>
    public static Fault NotAnAddress(string where, string typed) => new(where, "a 7-bit address such as 0x68", $"\"{typed}\" is not a bus address; write it as 0x68.");

    /// <summary>Hexadecimal or decimal?</summary>
    public static Fault HexOrDecimal(string where, string typed, int hex, int dec) =>
        new(where, $"0x{hex:X2} or 0x{dec:X2}", $"Is the address \"{typed}\" hexadecimal (0x{hex:X2}) or decimal (0x{dec:X2})?");

    /// <summary>An address above 7 bits.</summary>
    public static Fault EightBitAddress(string where, string typed, int value) =>
        new(where, $"0x{value >> 1:X2}", $"\"{typed}\" has more than 7 bits. Is it the 8-bit form of 0x{value >> 1:X2}, with the {((value & 1) == 0 ? "write" : "read")} bit behind it?");

    /// <summary>A column without a file or without a name.</summary>
    public static Fault ColumnForm(string where, string typed) => new(where, "file.csv#column", $"\"{typed}\" should name a file and a column: file.csv#column.");

    /// <summary>A column where no file can be read.</summary>
    public static Fault NoFilesHere(string where, string typed) => new(where, "a value", $"\"{typed}\" names a file, and here no file can be read.");

    /// <summary>A column without numbers.</summary>
    public static Fault EmptyColumn(string where, string typed) => new(where, "at least one number", $"The column \"{typed}\" holds no number.");

    /// <summary>A column with NaN or infinity.</summary>
    public static Fault ColumnNotFinite(string where, string typed, int row) =>
        new(where, "finite numbers", $"Number {row.ToString(CultureInfo.InvariantCulture)} of the column \"{typed}\" is not finite.");

    private static string Root(Unit unit) => UnitSymbols.Prefixed.Values.FirstOrDefault(atom => atom.Dimension == unit.Dimension)?.Symbol ?? unit.Symbol;

    private static string Short(string plain)
    {
        var trimmed = plain.TrimEnd('0').TrimEnd('.');
        return trimmed.Length == 0 ? "0" : trimmed;
    }

    private static string Hex(string digits) =>
        long.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var value) ? value.ToString(CultureInfo.InvariantCulture) : "a large number";

    private static bool IsNotFinite(string text)
    {
        var word = text.Trim(' ', '+', '-');
        return word.StartsWith("nan", StringComparison.OrdinalIgnoreCase) || word.StartsWith("inf", StringComparison.OrdinalIgnoreCase) || word.StartsWith('\u221E');
    }
}
