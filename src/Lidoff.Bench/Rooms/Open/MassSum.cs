using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>The masses of the parts of one specimen against the whole.</summary>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="WholeG">Mass of the whole, g; null where it was not weighed.</param>
/// <param name="PartsG">Sum of the parts, g; each counts with its last weighing.</param>
/// <param name="MissingG">Whole less parts, g; null without a whole.</param>
/// <param name="UG">Standard uncertainty of what is missing, g: of whole and parts together, as independent readings.</param>
/// <param name="Parts">How many parts were weighed.</param>
public sealed record MassSum(string Specimen, double? WholeG, double PartsG, double? MissingG, double UG, int Parts)
{
    // Two standard uncertainties: about 95 % of honest scales stay within it (JCGM 100:2008, 6.3.3).
    private const double Within = 2;

    /// <summary>The sum for each specimen that was weighed.</summary>
    public static ValueList<MassSum> Of(ValueList<Noted<SpecimenSighting>> specimens, ValueList<Noted<MassSighting>> masses) =>
    [
        .. masses.Select(mass => mass.Specimen).Concat(specimens.Where(each => each.Value.MassG is not null).Select(each => each.Value.Specimen))
            .Distinct(StringComparer.Ordinal).Select(name => One(name, specimens, masses)),
    ];

    /// <summary>The sentence under the table.</summary>
    public string Say => (MissingG, Parts) switch
    {
        (null, _) => $"The whole was not weighed; the parts are {Plain.Number(PartsG)} g together.",
        (_, 0) => $"The whole is {Plain.Number(WholeG)} g; no part was weighed yet.",
        ({ } missing, _) when Math.Abs(missing) <= Within * UG => $"The parts add up to the whole, {Plain.Number(WholeG)} g, within what the scales can tell (± {Digits(UG)} g).",
        ({ } missing, _) when missing < 0 => $"The parts weigh {Plain.With(-missing, UG, "g")} more than the whole: something was weighed twice, or gained something.",
        ({ } missing, _) => $"{Plain.With(missing, UG, "g")} of {Plain.Number(WholeG)} g was not weighed yet, or was lost.",
    };

    private static MassSum One(string name, ValueList<Noted<SpecimenSighting>> specimens, ValueList<Noted<MassSighting>> masses)
    {
        var own = masses.Where(mass => mass.Specimen == name).Select(mass => mass.Value).ToList();
        var parts = own.Where(mass => mass.Spot.Length > 0).GroupBy(mass => mass.Spot, StringComparer.Ordinal).Select(group => group.Last()).ToList();
        var whole = own.LastOrDefault(mass => mass.Spot.Length == 0)
            ?? specimens.Where(each => each.Value.Specimen == name && each.Value.MassG is not null).Select(each => new MassSighting("", each.Value.MassG!.Value, each.Value.UG)).LastOrDefault();
        var sum = parts.Sum(mass => mass.G);
        var u = Math.Sqrt(parts.Sum(mass => mass.UG * mass.UG) + ((whole?.UG ?? 0) * (whole?.UG ?? 0)));
        return new(name, whole?.G, sum, whole is null ? null : whole.G - sum, u, parts.Count);
    }

    // A doubt that stands alone: two digits, as behind a value.
    private static string Digits(double g) => g > 0 ? Plain.With(g, g, "").Split(" ± ")[1] : "0";
}
