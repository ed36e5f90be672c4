using Lidoff.Numbers;
using Lidoff.Seeing.Measuring.Carrying;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// What is believed of a camera before the picture says anything: a few kinds of cameras and hands, and how far away it stood.
/// The figures are priors of ours (common practice, no source), chosen before they were tried.
/// </summary>
/// <param name="LogFocal">Middle of the logarithm of the focal length in half long sides.</param>
/// <param name="LogFocalSpread">Its standard deviation.</param>
/// <param name="Lens">The lens where it is known from another picture; null for any.</param>
/// <param name="Slanting">True where the picture itself shows that it was taken at a slant on purpose: then how far is left to it.</param>
internal sealed record CameraBelief(double LogFocal, double LogFocalSpread, CarriedLens? Lens = null, bool Slanting = false)
{
    /// <summary>Focal length of the widest lens on a bench, half long sides: a phone's ultra-wide, 13 mm as on 35 mm film.</summary>
    public const double WidestLens = 0.7;

    // A copy stand or a microscope is square to a degree; a hand over a bench leans a few degrees each way; and some pictures are taken
    // at a slant on purpose, past the phone's own shadow.
    private static readonly (double Share, double Slant)[] Hands = [(0.33, 0.015), (0.52, 0.07), (0.15, 0.2)];

    // Where edges show a picture slanted on purpose, most of such look at the thing from the side, to show what stands on it.
    private static readonly (double Share, double Slant)[] OnPurpose = [(0.3, 0.2), (0.7, 0.8)];

    // Tangents between which a picture is slanted: 2°, which no stand leans by, and 27°, where the far end of a board gets out of focus; from the side 50°,
    // where hardly any lens keeps it in focus. A judgement.
    private const double LeastSlanted = 0.035;
    private const double MostSlanted = 0.5;
    private const double MostFromTheSide = 1.2;

    // A picture that is likelier slanted by more than so many degrees than by less, though so few are, shows itself slanted on purpose: what words call strong. Much more
    // cannot be asked: a lens as wide as none makes the same edges of a slant half as strong.
    private const double ShowsSlant = 12;

    // Phones and macro lenses are corrected to a few tenths of a per cent at the edge; wide lenses, web and action cameras are not.
    private static readonly (double Share, double Bend)[] Lenses = [(0.88, 0.003), (0.12, 0.03)];

    // Square pixels are the rule; another capture mode or a careless resize breaks it (trade S14).
    private const double OddShare = 0.03;
    private const double SquareAspect = 0.0003;
    private const double OddAspect = 0.03;

    private static readonly IReadOnlyList<CameraKind> AnyLens = Of(Hands, Lenses);

    private readonly (double Share, double Slant)[] hands = Slanting ? OnPurpose : Hands;

    /// <summary>Kinds of cameras; weights sum to one. Odd pixels behind a bent lens at a great slant would be three wonders at once.</summary>
    public IReadOnlyList<CameraKind> Kinds { get; } = Lens is null && !Slanting ? AnyLens : Of(Slanting ? OnPurpose : Hands, Lens is null ? Lenses : [(1, Lens.U)]);

    /// <summary>What is believed once poses under what is usual show a slant that is not: null where they do not.</summary>
    public CameraBelief? AfterSeeing(PoseFit fit) =>
        !Slanting && fit.Quantile(pose => pose.SlantDegrees, 0.5) > ShowsSlant ? new(LogFocal, LogFocalSpread, Lens, true) : null;

    /// <summary>How likely a slant beyond so many degrees is before the picture says anything.</summary>
    public double Beyond(double degrees)
    {
        var tangent = Elementary.Sin(degrees * Math.PI / 180) / Elementary.Cos(degrees * Math.PI / 180);
        return hands.Sum(hand => hand.Share * Elementary.Exp(-0.5 * Square(tangent / hand.Slant)));
    }

    /// <summary>
    /// How much likelier a slant is in a picture that is known to be slanted than in any picture, up to a factor: there any angle up to a quarter of a right one and a little more (from the side to a half) is
    /// believed in as much as any other, so that the known lengths alone say which.
    /// </summary>
    public double Slanted(CameraPose pose)
    {
        var slant = Math.Max(LeastSlanted, Math.Sqrt(Square(pose.Right) + Square(pose.Down)));
        var usual = hands.Sum(hand => hand.Share * Elementary.Exp(-0.5 * Square(slant / hand.Slant)) / Square(hand.Slant));
        var most = Square(Square(Square(slant / (Slanting ? MostFromTheSide : MostSlanted))));
        // Even in the angle is one over the tangent in each of its two parts.
        return Elementary.Exp(-most) / slant / usual;
    }

    /// <summary>Middle of the five coefficients of a pose.</summary>
    public double[] Centre => [0, 0, LogFocal, Lens?.Bend ?? 0, 0];

    /// <summary>Standard deviations of the five coefficients of a pose for one kind.</summary>
    public double[] Spreads(CameraKind kind) => [kind.Slant, kind.Slant, LogFocalSpread, kind.Bend, kind.Aspect];

    /// <summary>
    /// The belief for a picture. The focal length in half long sides is the camera's distance in half long sides of what the picture
    /// shows: known from a typed distance, from the camera's own data, or by what is usual on a bench.
    /// </summary>
    /// <param name="typedMm">Typed distance along the axis to what set the scale, mm, or null.</param>
    /// <param name="halfSideMm">Rough half of the long side of what the picture shows, mm.</param>
    /// <param name="focalLongSides">Focal length by the camera's own data, in long sides, or null.</param>
    /// <param name="lens">The lens where it is known from another picture, or null.</param>
    /// <param name="worked">Whether the picture may have been cropped since the camera wrote that.</param>
    public static CameraBelief Of(double? typedMm, double halfSideMm, double? focalLongSides, CarriedLens? lens = null, bool worked = false)
    {
        var (mean, weight) = (Elementary.Log(2 * CameraDistance.UnknownInLongSides), 1 / Square(CameraDistance.UnknownSpread));
        if (focalLongSides is { } focal)
        {
            (mean, weight) = worked ? (Elementary.Log(2 * focal * CameraDistance.CroppedTimes), 1 / Square(CameraDistance.CroppedSpread)) : (Elementary.Log(2 * focal), 1 / Square(CameraDistance.DataSpread));
        }

        if (typedMm is { } mm)
        {
            var more = 1 / Square(CameraDistance.TypedSpread);
            mean = ((mean * weight) + (Elementary.Log(mm / halfSideMm) * more)) / (weight + more);
            weight += more;
        }

        return new(mean, 1 / Math.Sqrt(weight), lens);
    }

    private static IReadOnlyList<CameraKind> Of((double Share, double Slant)[] hands, (double Share, double Bend)[] lenses) =>
    [
        .. from hand in hands
           from lens in lenses
           select new CameraKind(hand.Share * lens.Share * (1 - OddShare), hand.Slant, lens.Bend, SquareAspect),
        .. from hand in hands
           select new CameraKind(hand.Share * OddShare, hand.Slant, lenses[0].Bend, OddAspect),
    ];

    private static double Square(double x) => x * x;
}
