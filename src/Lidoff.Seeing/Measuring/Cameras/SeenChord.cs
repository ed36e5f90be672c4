using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>A length as it shows: both ends from the picture's middle in half long sides, and how many px they are apart.</summary>
internal readonly record struct SeenChord(double FromX, double FromY, double ToX, double ToY, double Px)
{
    /// <summary>Between two places of a picture.</summary>
    public static SeenChord Of(PicturePoint from, PicturePoint to, PictureFrame frame)
    {
        var half = Math.Max(frame.Width, frame.Height) / 2.0;
        var (cx, cy) = (frame.Width / 2.0, frame.Height / 2.0);
        return new((from.X - cx) / half, (from.Y - cy) / half, (to.X - cx) / half, (to.Y - cy) / half, from.DistanceTo(to));
    }
}
