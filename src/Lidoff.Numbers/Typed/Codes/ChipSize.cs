namespace Lidoff.Numbers.Typed.Codes;

/// <summary>A size of rectangular chip parts: code in hundredths of an inch (EIA), code in tenths of a millimetre (IEC), nominal length and width in mm.</summary>
public sealed record ChipSize(string Imperial, string Metric, double LengthMm, double WidthMm)
{
    /// <summary>The sizes in use, small to large (EIA and IEC names with nominal mm, from memory but for 1608).</summary>
    public static IReadOnlyList<ChipSize> All { get; } =
    [
        new("008004", "0201", 0.25, 0.125), new("01005", "0402", 0.4, 0.2), new("0201", "0603", 0.6, 0.3), new("0402", "1005", 1.0, 0.5),
        new("0603", "1608", 1.6, 0.8), new("0805", "2012", 2.0, 1.25), new("1206", "3216", 3.2, 1.6), new("1210", "3225", 3.2, 2.5),
        new("1812", "4532", 4.5, 3.2), new("2010", "5025", 5.0, 2.5), new("2512", "6332", 6.3, 3.2),
    ];

    /// <summary>
    /// Every size a code names: 0201, 0402 and 0603 exist in both systems and give two, imperial first; the lengths differ by
    /// a factor of about 2.5, so a measured length tells them apart.
    /// </summary>
    public static IReadOnlyList<ChipSize> Read(string? code) =>
        [.. All.Where(size => size.Imperial == code?.Trim()), .. All.Where(size => size.Metric == code?.Trim())];
}
