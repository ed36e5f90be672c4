using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>Round things of a picture, from vias of a few pixels to mounting holes: spots that differ from what is around them at some size, kept where a round edge goes all about them.</summary>
internal static class RoundSearch
{
    /// <summary>Blur of the finest look at each size, px.</summary>
    private const double Finest = 1.1;

    private const double RootTwo = 1.4142135623730951;

    // A disc of radius r stands out most where the blur is r/√2; between two blurs their mean tells.
    private const double RadiusPerBlur = RootTwo * 1.19;

    // Brightness by which a spot must differ from around itself; grain of 4 makes less than 0.3 at the finest size.
    private const float LeastContrast = 1.5f;

    // A via under mask differs by twenty and more; compression makes spots of five.
    private const float LeastApart = 8;

    // An edge this round all about: measured on rendered holes with grain and compression, with squares and letters on the other side.
    private const double LeastHeld = 0.72;
    private const double MostOval = 0.13;
    private const double LeastEven = 0.3;

    // At the spot's own size the disc is two pixels, and its blur is as wide: there it only has to be closed. What it is in truth, and how large, the finest look says: a plated
    // hole whose wall is lit from one side seems a third smaller and askew from far.
    private const double RoughlyHeld = 0.62;
    private const double RoughlyOval = 0.2;
    private const double MostGrown = 0.8;

    // Smaller ones are grain as often as holes, px.
    private const double LeastRadius = 2.2;

    private static readonly (double Cos, double Sin)[] Directions = [(1, 0), (0, 1), (-1, 0), (0, -1), (1 / RootTwo, 1 / RootTwo), (-1 / RootTwo, 1 / RootTwo), (-1 / RootTwo, -1 / RootTwo), (1 / RootTwo, -1 / RootTwo)];

    /// <summary>Discs, dark and bright, unsorted and several times each.</summary>
    public static List<(FoundMark Mark, double Held)> Find(GreyPicture grey)
    {
        var level = new SmoothLevel(grey.Width, grey.Height, grey.Values, grey.PxPerPx);
        var looks = new List<SmoothLevel>();
        var found = new List<(FoundMark Mark, double Held)>();
        while (Math.Min(level.Width, level.Height) >= 48)
        {
            var (fine, middle, wide) = Looks(level);
            looks.Add(fine);
            Spots(fine, middle, looks, Finest, found);
            Spots(middle, wide, looks, Finest * RootTwo, found);
            level = level.Halved();
        }

        return found;
    }

    private static (SmoothLevel Fine, SmoothLevel Middle, SmoothLevel Wide) Looks(SmoothLevel level)
    {
        var fine = level.Blurred(Finest);
        var middle = fine.Blurred(Finest);
        return (fine, middle, middle.Blurred(Finest * RootTwo));
    }

    private static void Spots(SmoothLevel fine, SmoothLevel wide, List<SmoothLevel> looks, double blur, List<(FoundMark Mark, double Held)> found)
    {
        var (width, height) = (fine.Width, fine.Height);
        var apart = new float[width * height];
        for (var i = 0; i < apart.Length; i++) apart[i] = fine.Values[i] - wide.Values[i];
        var least = Math.Max(LeastContrast, 6 * Typical(apart));
        var radius = blur * RadiusPerBlur;
        for (var y = 2; y < height - 2; y++)
        {
            for (var x = 2; x < width - 2; x++)
            {
                var value = apart[(y * width) + x];
                if ((value > -least && value < least) || !Peak(apart, width, x, y, value) || !Alone(fine, x + 0.5, y + 0.5, 1.9 * radius, value)) continue;
                if (Edge(looks, x + 0.5, y + 0.5, radius, value < 0) is { } mark) found.Add(mark);
            }
        }
    }

    /// <summary>The quarter that differs least of all: grain, on a picture of smooth things.</summary>
    private static float Typical(float[] apart)
    {
        const int stride = 37;
        var some = new float[apart.Length / stride];
        for (var i = 0; i < some.Length; i++) some[i] = Math.Abs(apart[i * stride]);
        Array.Sort(some);
        return some.Length == 0 ? 0 : some[some.Length / 4];
    }

    /// <summary>A quick look before the careful one: in all directions but one it is different a little further out. Lines and edges end here.</summary>
    private static bool Alone(SmoothLevel fine, double x, double y, double away, float value)
    {
        var (middle, missing) = (fine.At(x, y), 0);
        foreach (var (cos, sin) in Directions)
        {
            var apart = fine.At(x + (away * cos), y + (away * sin)) - middle;
            if ((value < 0 ? apart : -apart) < Math.Max(LeastApart, Math.Abs(value)) && ++missing > 1) return false;
        }

        return true;
    }

    private static bool Peak(float[] apart, int width, int x, int y, float value)
    {
        for (var dy = -1; dy <= 1; dy++)
        {
            for (var dx = -1; dx <= 1; dx++)
            {
                if (dx == 0 && dy == 0) continue;
                var other = apart[((y + dy) * width) + x + dx];
                if (value < 0 ? other < value || (other == value && (dy < 0 || (dy == 0 && dx < 0))) : other > value || (other == value && (dy < 0 || (dy == 0 && dx < 0)))) return false;
            }
        }

        return true;
    }

    /// <summary>The round edge, looked for at the spot's own size and then measured two sizes finer.</summary>
    private static (FoundMark Mark, double Held)? Edge(List<SmoothLevel> looks, double x, double y, double radius, bool dark)
    {
        var at = looks.Count - 1;
        if (RoundEdge.Around(looks[at], x, y, radius, dark) is not { } edge || !Roughly(edge)) return null;
        for (var finer = 0; finer < 2 && at > 0; finer++)
        {
            at--;
            if (RoundEdge.Around(looks[at], edge.X * 2, edge.Y * 2, edge.Radius * 2, dark) is not { } better || !Roughly(better) || Math.Abs(better.Radius - (2 * edge.Radius)) > MostGrown * edge.Radius) return null;
            edge = better;
        }

        if (!Round(edge)) return null;

        var px = looks[at].Px;
        return (new(new(edge.X * px, edge.Y * px), edge.Radius * px, edge.U * px, dark ? MarkSort.Dark : MarkSort.Bright, edge.Even * edge.Held), edge.Held);
    }

    private static bool Roughly(RoundEdge edge) => edge.Held >= RoughlyHeld && edge.Oval <= RoughlyOval;

    private static bool Round(RoundEdge edge) => edge.Held >= LeastHeld && edge.Oval <= MostOval && edge.Even >= LeastEven && edge.Radius >= LeastRadius && edge.Rest <= Math.Min(0.22 + (0.022 * edge.Radius), 0.09 * edge.Radius);
}
