using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>Which numbers a bench has: what lies beyond is a slip of the hand, and would only make arithmetic overflow. Bounds are judgements, wide of anything that is photographed.</summary>
internal static class BenchNumbers
{
    // From the digit that results are rounded to, to the length of a hall.
    private const double LeastMm = 1e-5;
    private const double MostMm = 1e5;

    // From a microscope's working distance to the other end of that hall.
    private const double NearestMm = 0.1;

    /// <summary>A known length above zero.</summary>
    public static void Length(List<Fault> faults, string where, double mm) => Within(faults, where, mm, LeastMm, MostMm, "mm");

    /// <summary>A standard uncertainty of zero or more.</summary>
    public static void Doubt(List<Fault> faults, string where, double mm) => Within(faults, where, mm, 0, MostMm, "mm");

    /// <summary>A height or a coordinate on the board.</summary>
    public static void Place(List<Fault> faults, string where, double mm) => Within(faults, where, mm, -MostMm, MostMm, "mm");

    /// <summary>A typed distance of the camera, where there is one.</summary>
    public static void Distance(List<Fault> faults, string where, double? mm) => Within(faults, where, mm ?? MostMm, NearestMm, MostMm, "mm");

    /// <summary>The doubt of a click: the picture itself is no smaller than it.</summary>
    public static void Click(List<Fault> faults, string where, double px, PictureFrame frame) => Within(faults, where, px, 0, Math.Max(frame.Width, frame.Height), "px");

    private static void Within(List<Fault> faults, string where, double value, double least, double most, string unit)
    {
        if (!(value >= least && value <= most)) faults.Add(SeeingSentences.BeyondTheBench(where, value, least, most, unit));
    }
}
