using System.Text.RegularExpressions;

namespace Lidoff.Catalogue.Packages;

/// <summary>Brings the many words for packages down to the family words of the contract. The order of the rules matters: the first that fits wins.</summary>
public static partial class PackageFamily
{
    /// <summary>Two-ended chip parts named by a four-digit size.</summary>
    public const string Chip = "chip";

    /// <summary>The family words of the contract, in its order.</summary>
    public static IReadOnlyList<string> Words { get; } =
        ["QFN", "DFN", "LGA", "BGA", "WLCSP", "SOIC", "SSOP", "TSSOP", "SOT", "SC70", "QFP", "chip", "module", "can", "die"];

    // Common trade words; MSOP and VSSOP (MO-187) are the thin shrink packages, QSOP (MO-137) and MO-150 the thicker ones.
    private static readonly (string[] Pieces, string Family)[] Rules =
    [
        (["MODULE", "CASTELLATED"], "module"),
        (["COGDIE", "COFDIE", "BAREDIE"], "die"),
        (["WLCSP", "WLBGA", "DSBGA", "WLP", "WLB", "UCSP", "VCSP", "FOWLP", "MICROFOOT", "WBBGA", "WLGA", "NANOFREE", "NANOSTAR"], "WLCSP"),
        // Drawings of one maker go by its own package codes.
        (["TEXASRG", "TEXASRN", "TEXASRW"], "QFN"),
        (["TEXASDRC", "TEXASDSC", "TEXASDQK", "TEXASDRT"], "DFN"),
        (["TEXASPWP"], "TSSOP"),
        (["LFCSP", "QFN", "MLPQ", "MLF", "TQLMP"], "QFN"),
        (["BGA", "MICROSTAR"], "BGA"),
        (["LGA"], "LGA"),
        (["QFP"], "QFP"),
        (["SC70", "SOT323", "SOT353", "SOT363", "SC88"], "SC70"),
        (["TSSOP", "MSOP", "VSSOP", "TVSOP", "USOIC", "TSDSO"], "TSSOP"),
        (["SSOP", "QSOP", "SSO"], "SSOP"),
        (["TSOP5", "TSOP6", "TSOC6", "SUPERSOT", "SOT", "SC59", "SC74", "SC75", "SC82", "TO236", "VSOF", "WSOF", "SSOT", "VMT3", "EMT6"], "SOT"),
        (["HTSOP"], "SOIC"),
        (["TSOP"], ""),
        (["DFN", "SON", "MLP", "USP", "SLP", "TSNP", "TSLP", "SNT", "MICROPAK", "MICROFET", "LLP"], "DFN"),
        (["SOIC", "SOP", "DSO", "MFSOP"], "SOIC"),
        (["CSP", "PICOSTAR"], "WLCSP"),
        (["CHIPLED"], "chip"),
        (["DIRECTFET", "CRYSTAL", "OSCILLATOR"], "can"),
        (["LCC"], "LGA"),
    ];

    private static readonly (string Size, double Length, double Width)[] ChipSizes =
    [
        // EIA sizes in inches and their metric bodies, common practice (IEC 60115-8 names them RR1005M and so on).
        ("01005", 0.4, 0.2), ("0201", 0.6, 0.3), ("0402", 1.0, 0.5), ("0603", 1.6, 0.8), ("0805", 2.0, 1.25), ("1206", 3.2, 1.6), ("1210", 3.2, 2.5),
    ];

    // Registered outlines (JEDEC publication 95) and what the trade calls packages of theirs.
    private static readonly (string Code, string Family)[] Standards =
    [
        ("MO-118", "SSOP"), ("MO-137", "SSOP"), ("MO-150", "SSOP"), ("MO-152", "TSSOP"), ("MO-153", "TSSOP"), ("MO-187", "TSSOP"), ("MO-194", "TSSOP"),
        ("MS-012", "SOIC"), ("MS-013", "SOIC"), ("MS-026", "QFP"), ("MO-178", "SOT"), ("MO-193", "SOT"), ("MO-203", "SC70"), ("MO-211", "WLCSP"),
        ("MO-220", "QFN"), ("MO-229", "DFN"), ("MO-287", "DFN"), ("MO-293", "SOT"), ("TO-236", "SOT"), ("TO-253", "SOT"), ("TO-261", "SOT"),
        // Makers' own codes for such packages, as their package lists pair them.
        ("SOT109-1", "SOIC"), ("SOT338-1", "SSOP"), ("SOT362-1", "TSSOP"), ("SOT370-1", "SSOP"), ("SOT403-1", "TSSOP"), ("DBQ-", "SSOP"), ("DB-", "SSOP"),
        ("DCT-", "SSOP"), ("DCU-", "TSSOP"), ("DDA-", "SOIC"), ("DGV-", "TSSOP"), ("DW-", "SOIC"), ("PW-", "TSSOP"), ("RGY-", "QFN"),
    ];

    /// <summary>The family word of a registered outline code ("MO-153 AB-1"), empty when it is none that is known here.</summary>
    public static string OfStandard(string code)
    {
        foreach (var (start, family) in Standards)
        {
            if (code.StartsWith(start, StringComparison.Ordinal)) return family;
        }

        return "";
    }

    /// <summary>The family word of a package name, empty when no rule knows it.</summary>
    public static string Of(string name)
    {
        if (ChipPattern().IsMatch(name)) return Chip;
        var folded = Fold(name);
        foreach (var (pieces, family) in Rules)
        {
            foreach (var piece in pieces)
            {
                if (folded.Contains(piece, StringComparison.Ordinal)) return family;
            }
        }

        if (folded == "DIE") return "die";
        return SmallOutline().IsMatch(name) ? "SOIC" : "";
    }

    /// <summary>
    /// True for the names whose number is an outline and no pin count: SOT-23 has three pins, SOT-363 six, SOD-123 two.
    /// <paramref name="pins"/> is null where the outline leaves it open (SC-70).
    /// </summary>
    public static bool NamesOutline(string name, out int? pins)
    {
        pins = null;
        var found = NamedOutline().Match(name);
        if (!found.Success) return false;
        if (found.Groups["n"] is { Success: true } n)
        {
            pins = n.Value[0] - '0';
            return true;
        }

        pins = found.Groups["w"].ValueSpan.Equals("SOD", StringComparison.OrdinalIgnoreCase) ? 2 : found.Groups["d"].Value switch
        {
            "23" or "59" or "323" or "416" or "523" or "883" or "89" or "223" or "75" or "723" or "236" or "92" or "252" => 3,
            "143" or "343" or "82" or "543" => 4,
            "353" or "553" or "665" or "753" => 5,
            "363" or "457" or "563" or "666" or "886" or "891" or "74" or "88" => 6,
            _ => null,
        };
        return true;
    }

    internal static (double? Length, double? Width) ChipBody(string name)
    {
        foreach (var (size, length, width) in ChipSizes)
        {
            if (ChipPattern().Match(name) is { Success: true } found && found.Groups[1].Value == size) return (length, width);
        }

        return (null, null);
    }

    private static string Fold(string name) => string.Create(name.Length, name, static (span, text) =>
    {
        var at = 0;
        foreach (var mark in text)
        {
            if (char.IsAsciiLetterOrDigit(mark)) span[at++] = char.ToUpperInvariant(mark);
        }

        span[at..].Fill(' ');
    }).TrimEnd();

    [GeneratedRegex(@"^(?:[A-Za-z]+_|chip )?(01005|0201|0402|0603|0805|1206|1210|1812|2010|2512)(?:_|$)", RegexOptions.CultureInvariant)]
    private static partial Regex ChipPattern();

    [GeneratedRegex(@"(?:^|_)SO-?\d+", RegexOptions.CultureInvariant)]
    private static partial Regex SmallOutline();

    [GeneratedRegex(@"(?<![A-Za-z])T?(?<w>SOT|SC|SOD|TO)-?(?<d>23|59|70|92|74|75|82|88|89|123|128|143|223|236|252|323|343|353|363|416|457|523|543|553|563|665|666|723|753|883|886|891|923)(?:[A-Z]{0,2}(?:-THIN)?-(?<n>\d)(?!\d))?", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NamedOutline();
}
