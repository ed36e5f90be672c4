namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>Few poses for many, with nearly the same lengths anywhere in the picture: the many are halved again and again where lengths differ most, and one of each part stands for it.</summary>
internal static class PoseThinning
{
    // Lengths anywhere follow from these: short chords each way in the middle and towards the corners, in half long sides.
    private static readonly SeenChord[] Chords =
    [
        .. from place in new (double X, double Y)[] { (0, 0), (-0.7, -0.5), (0.7, -0.5), (-0.7, 0.5), (0.7, 0.5) }
           from way in new (double X, double Y)[] { (0.1, 0), (0, 0.1) }
           select new SeenChord(place.X - way.X, place.Y - way.Y, place.X + way.X, place.Y + way.Y, 0),
    ];

    /// <summary>Two to the <paramref name="halvings"/> of them at most; weights sum to what they did.</summary>
    public static IReadOnlyList<SeenPose> To(IReadOnlyList<SeenPose> poses, int halvings)
    {
        if (poses.Count <= 1 << halvings) return poses;
        var seen = new double[Chords.Length][];
        for (var j = 0; j < seen.Length; j++)
        {
            seen[j] = new double[poses.Count];
            for (var i = 0; i < poses.Count; i++)
            {
                var mm = poses[i].DistanceMm * poses[i].Pose.Unit(Chords[j], poses[i].Focal);
                // A pose under which this corner is beyond the horizon lies at an end.
                seen[j][i] = double.IsFinite(mm) ? mm : double.MaxValue;
            }
        }

        var thin = new List<SeenPose>(1 << halvings);
        Halve([.. Enumerable.Range(0, poses.Count)], halvings);
        return thin;

        void Halve(int[] part, int left)
        {
            var whole = part.Sum(at => poses[at].Weight);
            if (left == 0 || part.Length == 1)
            {
                // One of them by chance, the same every time: the middle one would leave out what they differ by.
                var (chosen, upTo) = (0, Rendering.Scatter.Even(419, thin.Count, 0) * whole);
                while (chosen < part.Length - 1 && (upTo -= poses[part[chosen]].Weight) > 0) chosen++;
                thin.Add(poses[part[chosen]] with { Weight = whole });
                return;
            }

            var widest = Widest(part, whole);
            double[] keys = [.. part.Select(at => widest[at])];
            Array.Sort(keys, part);
            var (cut, below) = (1, poses[part[0]].Weight);
            while (cut < part.Length - 1 && below + poses[part[cut]].Weight <= whole / 2) below += poses[part[cut++]].Weight;
            Halve(part[..cut], left - 1);
            Halve(part[cut..], left - 1);
        }

        double[] Widest(int[] part, double whole) => seen.MaxBy(each =>
        {
            var (first, sum, squares) = (each[part[0]], 0.0, 0.0);
            foreach (var at in part)
            {
                var off = (each[at] / first) - 1;
                (sum, squares) = (sum + (poses[at].Weight * off), squares + (poses[at].Weight * off * off));
            }

            return squares - (sum * sum / whole);
        })!;
    }
}
