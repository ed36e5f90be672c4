using System.Globalization;
using System.Text.RegularExpressions;

namespace Lidoff.Catalogue.Packages;

/// <summary>
/// What a package name itself tells: family word, pins, body, height and pitch in mm. Names are the free words of data sheets
/// and drawing libraries: <c>QFN-48-1EP_6x6mm_P0.4mm</c>, <c>SOT-23-5 (DBV)</c>, <c>QFN-20 3x3 p0.4</c>, <c>0402</c>.
/// </summary>
public sealed partial record PackageName(string Name, string Family, int? Pins, double? LengthMm, double? WidthMm, double? HeightMm, double? PitchMm)
{
    // A larger number in a name is a body size ("CL-2025") or a code.
    private const int MostPins = 1000;

    /// <summary>Reads one name. Several names joined by "or" belong through <see cref="Alternatives"/> first.</summary>
    public static PackageName Read(string name)
    {
        var family = PackageFamily.Of(name);
        var (length, width, height) = Body(name);
        if (family == PackageFamily.Chip && length is null) (length, width) = PackageFamily.ChipBody(name);
        return new PackageName(name, family, PinsOf(name, family), length, width, height, PitchOf(name));
    }

    /// <summary>Splits "SOP-8 or MSOP-8", "TSSOP-8 / SOT-23-6" and "QFN/aQFN/WLCSP" into single names; "SOT-23-5/6" stays one.</summary>
    public static IReadOnlyList<string> Alternatives(string text)
    {
        if (text.Length == 0) return [];
        var bare = text.IndexOf(" (", StringComparison.Ordinal) is var at and > 0 ? text[..at] : text;
        return Splitter().IsMatch(bare) ? Splitter().Split(text) : [text];
    }

    private static (double? Length, double? Width, double? Height) Body(string name)
    {
        var found = BodyPattern().Match(name);
        if (!found.Success) return (null, null, null);
        var a = Number(found.Groups[1]);
        var b = Number(found.Groups[2]);
        // Two-sided drawings write width first, so the longer side is the length whatever the order.
        return a is null || b is null ? (null, null, null) : (Math.Max(a.Value, b.Value), Math.Min(a.Value, b.Value), Number(found.Groups[3]));
    }

    private static double? PitchOf(string name) => PitchPattern().Match(name) is { Success: true } found ? Number(found.Groups[1]) : null;

    private static int? PinsOf(string name, string family)
    {
        if (PackageFamily.NamesOutline(name, out var known)) return known;
        if (family == PackageFamily.Chip && ChipPins().Match(name) is { Success: false }) return 2;
        var found = PinPattern().Match(name);
        return found.Success && int.TryParse(found.Groups[1].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var pins) && pins is > 0 and <= MostPins
            ? pins : null;
    }

    private static double? Number(Group group) =>
        group.Success && double.TryParse(group.ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;

    [GeneratedRegex(@"\s+or\s+|\s*/\s*(?=[A-Za-z])", RegexOptions.CultureInvariant)]
    private static partial Regex Splitter();

    [GeneratedRegex(@"(?:^|[_\s])(\d{1,3}(?:\.\d{1,4})?)[xX](\d{1,3}(?:\.\d{1,4})?)(?:[xX](\d{1,2}(?:\.\d{1,4})?))?(?:mm)?(?=$|[_\s,)])", RegexOptions.CultureInvariant)]
    private static partial Regex BodyPattern();

    [GeneratedRegex(@"(?:^|[_\s])[Pp](\d{1,2}(?:\.\d{1,4})?)(?:mm)?(?=$|[_\s,)])", RegexOptions.CultureInvariant)]
    private static partial Regex PitchPattern();

    [GeneratedRegex(@"[A-Za-z0-9]-(\d{1,4})W?(?=$|[-_\s,)/])", RegexOptions.CultureInvariant)]
    private static partial Regex PinPattern();

    [GeneratedRegex(@"-(\d+)", RegexOptions.CultureInvariant)]
    private static partial Regex ChipPins();
}
