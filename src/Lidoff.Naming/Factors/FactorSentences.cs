using System.Globalization;
using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;
using Lidoff.Naming.Dates;

namespace Lidoff.Naming.Factors;

/// <summary>Every sentence that says why a candidate gained or lost.</summary>
public static class FactorSentences
{
    /// <summary>The package word.</summary>
    public static string Package(string seen, IReadOnlyList<string> listed) =>
        listed.Count == 0 ? $"{seen}; its package is not known here." : $"{seen} seen; it comes as {string.Join(", ", listed)}.";

    /// <summary>Body sides.</summary>
    public static string Body((double A, double B) seen, IReadOnlyList<PackageFact> packages, double log) => Body(Text($"{seen.A:0.###} × {seen.B:0.###} mm measured"), packages, log);

    /// <summary>One body side of which it is known which.</summary>
    public static string BodySide(double mm, bool longSide, IReadOnlyList<PackageFact> packages, double log) => Body(Text($"{mm:0.###} mm {(longSide ? "long" : "short")} side measured"), packages, log);

    private static string Body(string measured, IReadOnlyList<PackageFact> packages, double log)
    {
        var sizes = packages.Where(p => p is { LengthMm: not null, WidthMm: not null }).Select(p => Text($"{p.LengthMm} × {p.WidthMm}")).Distinct(StringComparer.Ordinal).ToArray();
        return sizes.Length == 0 ? $"{measured}; its body is not known here." : $"{measured}; it is {string.Join(" or ", sizes)} mm{(log < -1 ? ", which does not fit" : "")}.";
    }

    /// <summary>Pin count.</summary>
    public static string Pins(int seen, IReadOnlyList<int> listed) =>
        listed.Count == 0 ? Text($"{seen} pins counted; its pins are not known here.") : Text($"{seen} pins counted; it has {Join(listed)}.");

    /// <summary>Pitch.</summary>
    public static string Pitch(double seen, IReadOnlyList<double> listed) =>
        listed.Count == 0 ? Text($"{seen:0.###} mm pitch; its pitch is not known here.") : Text($"{seen:0.###} mm pitch measured; it has {Join(listed)} mm.");

    /// <summary>Height.</summary>
    public static string Height(double seen, IReadOnlyList<double> listed) =>
        listed.Count == 0 ? Text($"{seen:0.###} mm high; its height is not known here.") : Text($"{seen:0.###} mm high; {Join(listed)} mm is listed.");

    /// <summary>Bus address.</summary>
    public static string Address(int seen, IReadOnlyList<int> listed, IReadOnlyList<int> examples) =>
        examples.Contains(seen) ? $"Answers at 0x{seen:x2}, which an example of it shows." : listed.Count == 0 ? $"Answers at 0x{seen:x2}; it is shown elsewhere, at {string.Join(", ", examples.Select(a => $"0x{a:x2}"))}." : listed.Contains(seen) ? $"Answers at 0x{seen:x2}, one of its {listed.Count} listed address{(listed.Count == 1 ? "" : "es")}." : $"Answers at 0x{seen:x2}; it is listed at {string.Join(", ", listed.Select(a => $"0x{a:x2}"))}.";

    /// <summary>Bus type.</summary>
    public static string BusType(string seen, string listed, bool talks) =>
        listed.Length == 0 ? "Answers on a bus; its interface is not known here." : talks ? $"Answers on {seen}; its interface is {listed}." : $"Answers on {seen}; its interface is {listed}, which does not fit.";

    /// <summary>Identity register.</summary>
    public static string Identity(RegisterFact seen, bool own, IReadOnlyList<long> listed) =>
        listed.Count == 0 ? $"Register 0x{seen.Register:x2} returned 0x{seen.Value:x2}; what it returns there is not known here."
        : own ? $"Register 0x{seen.Register:x2} returned 0x{seen.Value:x2}, its own value."
        : $"Register 0x{seen.Register:x2} returned 0x{seen.Value:x2}; it returns {string.Join(" or ", listed.Select(v => $"0x{v:x2}"))}.";

    /// <summary>Supply.</summary>
    public static string Supply(double seen, double? least, double? most, bool fits) =>
        least is null && most is null ? Text($"Runs at {seen} V; its range is not known here.")
        : Text($"Runs at {seen} V; it works from {(least is null ? "?" : Text($"{least}"))} to {(most is null ? "?" : Text($"{most}"))} V{(fits ? "" : ", which does not fit")}.");

    /// <summary>Date code.</summary>
    public static string Date(DateCode code, int? introduced) =>
        code.Readings.Count == 0 ? $"'{code.Code}' has no reading as a date."
        : introduced is null ? $"'{code.Code}' is most likely {code.Readings[0].Weeks.From}; the year it came out is not known here."
        : Text($"'{code.Code}' is most likely {code.Readings[0].Weeks.From}; it came out in {introduced}.");

    /// <summary>Class.</summary>
    public static string Class(string seen, string listed, bool same) => same ? $"Taken for a {seen}; it is a {listed}." : $"Taken for a {seen}; it is {(listed.Length == 0 ? "of a kind not known here" : "a " + listed)}.";

    /// <summary>Role.</summary>
    public static string Role(IReadOnlyList<string> words, string group, bool speaks) =>
        words.Count == 0 ? "The note about its neighbours holds no word that tells kinds apart." : speaks ? $"Neighbours ({string.Join(", ", words)}) are usual for the kind '{group}'." : $"Neighbours ({string.Join(", ", words)}) are not typical of the kind '{group}'.";

    /// <summary>Ground pins.</summary>
    public static string GroundPins(IReadOnlyList<string> seen, IReadOnlyList<string> listed) =>
        listed.Count == 0 ? "Its ground pins are not known here." : $"Ground found on {string.Join(", ", seen)}; its ground pins are {string.Join(", ", listed)}.";

    /// <summary>What of a part's mark stands in what was read.</summary>
    public static string Mark(string read, string form, Marks.MarkFormKind kind, Marks.MarkFit fit)
    {
        var name = kind switch
        {
            Marks.MarkFormKind.Full => $"its full number {form}",
            Marks.MarkFormKind.OrderCode => $"its order code {form}",
            Marks.MarkFormKind.PrefixDropped => $"its number without the letters in front, {form}",
            Marks.MarkFormKind.SuffixDropped => $"its number without what follows, {form}",
            Marks.MarkFormKind.Middle => $"the middle of its number, {form}",
            Marks.MarkFormKind.Pattern => $"its known mark {form}",
            _ => "",
        };
        if (name.Length == 0 || fit.Have == 0) return NoMark(read);
        return fit.Kind switch
        {
            Marks.MarkFitKind.Whole => $"'{read}' fits {name}.",
            Marks.MarkFitKind.Begins => $"'{read}' begins with {name}.",
            Marks.MarkFitKind.Holds => $"'{read}' holds {name}.",
            _ => Text($"{fit.Have} of {fit.Total} characters of {name} are in '{read}'."),
        };
    }

    /// <summary>Mark that fits nothing of the part.</summary>
    public static string NoMark(string read) => $"Nothing of its number is in '{read}'.";

    private static string Join<T>(IEnumerable<T> values)
        where T : IFormattable => string.Join(" or ", values.Select(v => v.ToString(null, CultureInfo.InvariantCulture)));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
