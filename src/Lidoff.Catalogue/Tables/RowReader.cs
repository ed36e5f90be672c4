using System.Globalization;
using Lidoff.Catalogue.Parts;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Tables;

/// <summary>
/// Turns named cells into a <see cref="CatalogueRow"/>, or into every fault of the row. Ranges are wide on purpose: they are
/// there to catch a wrong unit (micrometres for millimetres, milliamperes for amperes), not an odd part.
/// </summary>
public sealed class RowReader(string table, bool? decimalComma)
{
    /// <summary>Longest cell, characters; a pin-out of 1,200 balls stays below it.</summary>
    public const int LongestCell = 32_768;

    /// <summary>Reads one row. <paramref name="cell"/> gives the text of a column, empty when the table lacks it.</summary>
    public Outcome<CatalogueRow> Read(int line, Func<string, string> cell)
    {
        var faults = new List<Fault>();
        var reading = new Reading(line, cell, decimalComma, faults);
        var part = reading.Word("part");
        if (part.Length == 0) faults.Add(CatalogueSentences.NoPart(line));
        var (value, mask) = reading.Identity();
        var row = new CatalogueRow
        {
            Origin = new RowOrigin(table, line),
            Part = part,
            Maker = reading.Word("maker"),
            Class = reading.Word("class"),
            Package = reading.Word("package"),
            LengthMm = reading.Number("body_l_mm", 0.1, 200, "mm"),
            WidthMm = reading.Number("body_w_mm", 0.1, 200, "mm"),
            HeightMm = reading.Number("height_mm", 0.05, 60, "mm"),
            PitchMm = reading.Number("pitch_mm", 0.1, 30, "mm"),
            Pins = (int?)reading.Whole("pins", 1, 5000),
            Pinout = reading.Pinout(),
            Interface = reading.Word("interface"),
            Addresses = reading.Addresses("i2c_addresses"),
            ExampleAddresses = reading.Addresses("example_addresses"),
            IdRegister = reading.Register(),
            IdValue = value,
            IdMask = mask,
            Marks = reading.Marks(),
            SupplyLeast = reading.Number("supply_min_v", 0, 1000, "V"),
            SupplyMost = reading.Number("supply_max_v", 0, 1000, "V"),
            Introduced = reading.Year("introduced"),
            IdleCurrent = reading.Number("idle_current_a", 0, 1, "A"),
            ActiveCurrent = reading.Number("active_current_a", 0, 20, "A"),
            Price = reading.Word("price"),
            SecondSources = reading.Word("second_sources"),
            Source = reading.Word("source"),
            Confidence = reading.Trust(),
        };
        if (row.SupplyLeast > row.SupplyMost) faults.Add(CatalogueSentences.SupplyTurned(line));
        return faults.Count > 0 ? Outcome<CatalogueRow>.Failed(faults) : row;
    }

    private readonly struct Reading(int line, Func<string, string> cell, bool? comma, List<Fault> faults)
    {
        public string Word(string column)
        {
            var text = cell(column).Trim();
            if (text.Length <= LongestCell) return text;
            faults.Add(CatalogueSentences.LongCell(line, column, LongestCell));
            return "";
        }

        public double? Number(string column, double least, double most, string unit)
        {
            var text = Word(column);
            switch (NumberWord.Read(text, comma, out var value))
            {
                case NumberVerdict.Empty: return null;
                case NumberVerdict.Ambiguous: faults.Add(CatalogueSentences.AmbiguousNumber(line, column, text)); return null;
                case NumberVerdict.Not: faults.Add(CatalogueSentences.NotANumber(line, column, text)); return null;
                default:
                    if (value >= least && value <= most) return value;
                    faults.Add(CatalogueSentences.OutOfRange(line, column, text, least, most, unit));
                    return null;
            }
        }

        public long? Whole(string column, int least, int most)
        {
            var value = Number(column, least, most, "");
            if (value is null || value == Math.Floor(value.Value)) return (long?)value;
            faults.Add(CatalogueSentences.NotWhole(line, column, Word(column)));
            return null;
        }

        // A date of introduction may be a year or a date that starts with one. The first integrated circuit is of 1958.
        public int? Year(string column)
        {
            var text = Word(column);
            if (text.Length == 0) return null;
            var head = text.Length > 4 && text[4] is '-' or '/' ? text[..4] : text;
            if (int.TryParse(head, NumberStyles.None, CultureInfo.InvariantCulture, out var year) && year is >= 1958 and <= 2100) return year;
            faults.Add(CatalogueSentences.OutOfRange(line, column, text, 1958, 2100, ""));
            return null;
        }

        public IReadOnlyList<Pin> Pinout()
        {
            var pins = PinoutText.Read(Word("pinout"), out var odd);
            if (pins is null) faults.Add(CatalogueSentences.BadPinout(line, odd));
            return pins ?? [];
        }

        public IReadOnlyList<int> Addresses(string column)
        {
            var text = Word(column);
            if (text.Length == 0) return [];
            var addresses = new SortedSet<int>();
            foreach (var word in text.Split([' ', ',', ';', '|'], StringSplitOptions.RemoveEmptyEntries))
            {
                // UM10204 section 3.1.10: seven bits, so 0x7f at most. 0x80 and above is the 8-bit form with the direction bit.
                if (HexWord.Read(word) is { } address and >= 0 and <= 0x7f) addresses.Add((int)address);
                else faults.Add(CatalogueSentences.BadAddress(line, word));
            }

            return [.. addresses];
        }

        public int? Register()
        {
            var text = Word("id_register");
            if (text.Length == 0) return null;
            if (HexWord.Read(text) is { } register and <= int.MaxValue) return (int)register;
            faults.Add(CatalogueSentences.BadIdentity(line, "id_register", text));
            return null;
        }

        public (long? Value, long Mask) Identity()
        {
            var text = Word("id_value");
            if (text.Length == 0) return (null, -1);
            var slash = text.IndexOf('/', StringComparison.Ordinal);
            var value = HexWord.Read(slash < 0 ? text : text[..slash]);
            var mask = slash < 0 ? -1 : HexWord.Read(text[(slash + 1)..]);
            if (value is null || mask is null) faults.Add(CatalogueSentences.BadIdentity(line, "id_value", text));
            return (value, mask ?? -1);
        }

        public string[] Marks()
        {
            var text = Word("marks");
            if (text.Length == 0) return [];
            var marks = text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (marks.Any(m => m.AsSpan().IndexOfAnyExcept("*?/ ") < 0)) faults.Add(CatalogueSentences.BlankMark(line));
            return marks;
        }

        public Confidence Trust()
        {
            var text = Word("confidence");
            switch (text)
            {
                case "published": return Confidence.Published;
                case "derived": return Confidence.Derived;
                case "memory" or "": return Confidence.Memory;
                default:
                    faults.Add(CatalogueSentences.BadConfidence(line, text));
                    return Confidence.Memory;
            }
        }
    }
}
