using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Lettering;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>
/// A picture to show around: what was pointed at named beside it on leader lines, a scale bar of a round length, title and credit.
/// The picture inside is a copy without place, camera serial or name of an owner. Same input, same bytes; no fonts are needed.
/// </summary>
public sealed class LabelledPicture
{
    /// <summary>Longest side of the picture inside, px; larger ones are reduced.</summary>
    public const int LongestSide = 2400;

    /// <summary>Most labels in one picture.</summary>
    public const int MostSpots = 200;

    private const string Ground = "#1D2430", White = "#FFFFFF", Soft = "#C9CFD8", Amber = "#F0B35E";

    // In cap heights: room for the longest words under a bar, whatever the picture's width.
    private const double LeastWidth = 32;

    // In cap heights: how wide words beside the picture may run, and the air between lines, labels and picture.
    private const double WordsWidth = 11, Line = 1.55, Gap = 1.2, SmallWords = 0.78;

    private readonly DrawnSheet sheet;
    private readonly string description;

    private LabelledPicture(DrawnSheet sheet, string alternative, string description, LabelLayout layout, IReadOnlyList<string> remarks)
    {
        this.sheet = sheet;
        this.description = description;
        (Alternative, Layout, Remarks) = (alternative, layout, remarks);
    }

    /// <summary>Width of the drawing, px.</summary>
    public int Width => sheet.Width;

    /// <summary>Height of the drawing, px.</summary>
    public int Height => sheet.Height;

    /// <summary>What somebody hears who cannot see it.</summary>
    public string Alternative { get; }

    /// <summary>Where the labels came to stand, in px below the title.</summary>
    public LabelLayout Layout { get; }

    /// <summary>Sentences about what is not as asked: a spot outside the picture, a picture that breaks off.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>
    /// Labels a picture. Faults only where the picture cannot be opened; a spot that cannot be drawn becomes a remark.
    /// </summary>
    /// <param name="path">The picture's file.</param>
    /// <param name="name">Its name, for sentences.</param>
    /// <param name="spots">What is pointed at, in px of the upright picture.</param>
    /// <param name="scale">Its scale; null where none is known.</param>
    /// <param name="words">Title, credit, licence and notice.</param>
    public static Outcome<LabelledPicture> Of(string path, string name, IReadOnlyList<PictureSpot> spots, BarScale? scale, PictureWords words)
    {
        var read = PictureFile.Read(path, name);
        if (!read.TryValue(out var header)) return Outcome<LabelledPicture>.Failed(read.Faults);
        var whole = PictureFile.Check(path, name);
        return ShownPicture.Of(path, name, header, LongestSide).Then(shown => Draw(shown, header, spots, scale, words, [.. whole.Faults.Select(fault => fault.Say)]));
    }

    /// <summary>The drawing as one SVG file that needs no other.</summary>
    public string Svg() => sheet.Svg(Alternative, description);

    /// <summary>The drawing as PNG.</summary>
    public byte[] Png() => sheet.Png();

    private static LabelledPicture Draw(ShownPicture shown, PictureHeader header, IReadOnlyList<PictureSpot> spots, BarScale? scale, PictureWords words, List<string> remarks)
    {
        var (kx, ky) = ((double)shown.Width / header.Width, (double)shown.Height / header.Height);
        var inside = spots.Where(spot => spot.At.X >= 0 && spot.At.X <= header.Width && spot.At.Y >= 0 && spot.At.Y <= header.Height).ToList();
        remarks.AddRange(spots.Except(inside).Select(spot => LabelledSentences.Outside(spot, header.Width, header.Height)));
        if (inside.Count > MostSpots) remarks.Add(LabelledSentences.TooMany(inside.Count, MostSpots));
        if (inside.Count > MostSpots) inside = inside[..MostSpots];
        // A hundredth of the picture reads well on a page and on a screen; smaller where many labels share a side, never below 9 px.
        var size = Math.Round(Math.Clamp(Math.Min(Math.Max(shown.Width, shown.Height) / 90.0, Math.Max(shown.Height, 300) * 2.0 / Math.Max(1, inside.Count) / 3.4), 9, 28) * 4) / 4;
        var labels = inside.Select(spot => new Label(LabelText.Wrap(LabelText.Clean(spot.Spot), WordsWidth, 1), LabelText.Wrap(LabelText.Clean(spot.Words), WordsWidth / SmallWords, 2))).ToList();
        var layout = LabelLayout.Of(
            shown.Width,
            shown.Height,
            [.. labels.Select((label, i) => new LabelWish(inside[i].Spot, new(inside[i].At.X * kx, inside[i].At.Y * ky), label.Width * size, label.Height * size))],
            size * Gap);
        var side = Math.Round(size * 1.5);
        var across = (int)Math.Ceiling(Math.Max(layout.Width + (2 * side), size * LeastWidth));
        // The picture stands on whole pixels, so that it is laid down and not resampled.
        var left = Math.Floor((across - layout.Width) / 2) + Fraction(layout.PictureX);
        var heading = new List<(string Text, double Size, string Ink)>();
        heading.AddRange(LabelText.Wrap(LabelText.Clean(words.Title), (across - (2 * side)) / (size * 1.3), 2).Select(line => (line, size * 1.3, White)));
        heading.AddRange(LabelText.Wrap(LabelText.Clean(words.Notice), (across - (2 * side)) / size, 2).Select(line => (line, size, Amber)));
        var above = side + heading.Sum(line => line.Size * 1.7);
        var top = Math.Ceiling(above) + Fraction(layout.PictureY);
        var bar = Bar(scale, kx, shown.Width, remarks);
        var footing = new List<(string Text, double Size, string Ink)>();
        var credit = string.Join(" · ", new[] { LabelText.Clean(words.Credit), LabelText.Clean(words.Licence) }.Where(text => text.Length > 0));
        footing.AddRange(LabelText.Wrap(credit, (across - (2 * side)) / (size * SmallWords), 3).Select(line => (line, size * SmallWords, Soft)));
        var barHeight = size * 4.2;
        var sheet = new DrawnSheet(across, (int)Math.Ceiling(top + layout.Height + (side / 2) + barHeight + footing.Sum(line => line.Size * 1.7) + side), Ground);
        Lines(sheet, heading, side, side);
        sheet.Picture(shown, left + layout.PictureX, top + layout.PictureY);
        foreach (var place in layout.Places) Leader(sheet, place, left, top, size);
        for (var i = 0; i < labels.Count; i++) Words(sheet, labels[i], layout.Places[i], left, top, size);
        var foot = top + layout.Height + (side / 2);
        // Under the picture's left edge, or as far left of it as the words need.
        Bar(sheet, bar, scale, Math.Max(side, Math.Min(left + layout.PictureX, across - side - Math.Max(bar?.Px ?? 0, size * (LeastWidth - 4)))), foot, size);
        Lines(sheet, footing, side, foot + barHeight);
        var title = LabelText.Clean(words.Title);
        var said = inside.Select((spot, i) => LabelText.Clean(spot.Spot) + (spot.Words.Length > 0 ? ": " + LabelText.Clean(spot.Words) : ""));
        return new(
            sheet,
            LabelledSentences.Alternative(title, inside.Count, bar is { } drawn ? BarLength.Words(drawn.Mm) : ""),
            string.Join("\n", new[] { LabelText.Clean(words.Notice), string.Join("; ", said), bar is null ? LabelledSentences.NoScale() : LabelledSentences.ScaleWords(scale), credit }.Where(text => text.Length > 0)),
            layout,
            remarks);
    }

    private static (double Mm, double Px)? Bar(BarScale? scale, double shrink, int width, List<string> remarks)
    {
        if (scale is null) return null;
        var pxPerMm = scale.PxPerMm * shrink;
        // Beyond these the picture would be a thousandth of a µm or a hundred km wide: a slip, not a scale.
        if (!(pxPerMm > 1e-6 && pxPerMm < 1e9 && scale.RelativeU >= 0 && double.IsFinite(scale.RelativeU)))
        {
            remarks.Add(LabelledSentences.NoBar());
            return null;
        }

        var mm = BarLength.Of(0.35 * width / pxPerMm);
        return (mm, mm * pxPerMm);
    }

    private static void Bar(DrawnSheet sheet, (double Mm, double Px)? bar, BarScale? scale, double x, double y, double size)
    {
        if (bar is not { } drawn)
        {
            sheet.Words(LabelledSentences.NoScale(), x, y + size, size * SmallWords, Soft, 0.13);
            return;
        }

        var line = y + size;
        sheet.Box(x, line - (size * 0.18), drawn.Px, size * 0.36, White);
        sheet.Box(x, line - (size * 0.5), size * 0.16, size, White);
        sheet.Box(x + drawn.Px - (size * 0.16), line - (size * 0.5), size * 0.16, size, White);
        var words = BarLength.Words(drawn.Mm);
        sheet.Words(words, x, line + (size * 0.95), size, White, 0.15);
        if (LabelledSentences.ScaleWords(scale) is not { Length: > 0 } doubt) return;
        sheet.Words(doubt, x + ((LetterShapes.Width(words) + 1) * size), line + (size * (1.95 - SmallWords)), size * SmallWords, scale!.Doubtful ? Amber : Soft, 0.13);
    }

    private static void Leader(DrawnSheet sheet, LabelPlace place, double left, double top, double size)
    {
        var (port, tip) = (new PicturePoint(left + place.Port.X, top + place.Port.Y), new PicturePoint(left + place.Tip.X, top + place.Tip.Y));
        sheet.Strokes([new([port, tip]), new([tip, tip])], size * 0.12, White, Ground, size * 0.1);
        sheet.Strokes([new([tip, tip])], size * 0.5, White, Ground, size * 0.12);
    }

    private static void Words(DrawnSheet sheet, Label label, LabelPlace place, double left, double top, double size)
    {
        var y = top + place.Y + (size * 0.2);
        foreach (var (text, scale, weight, ink) in label.Lines)
        {
            var x = left + place.X + (place.Left ? place.Width - (LetterShapes.Width(text) * size * scale) : 0);
            sheet.Words(text, x, y, size * scale, ink, weight);
            y += size * scale * Line;
        }
    }

    private static void Lines(DrawnSheet sheet, List<(string Text, double Size, string Ink)> lines, double x, double y)
    {
        foreach (var (text, size, ink) in lines)
        {
            sheet.Words(text, x, y, size, ink, 0.14);
            y += size * 1.7;
        }
    }

    /// <summary>What brings a length to the next whole number.</summary>
    private static double Fraction(double value) => Math.Ceiling(value) - value;

    /// <summary>A label's lines: its designator, then small words; sizes in cap heights.</summary>
    private sealed record Label(IReadOnlyList<string> Name, IReadOnlyList<string> Small)
    {
        public IEnumerable<(string Text, double Scale, double Weight, string Ink)> Lines =>
            Name.Select(line => (line, 1.0, 0.18, White)).Concat(Small.Select(line => (line, SmallWords, 0.13, Soft)));

        public double Width => Math.Max(1, Lines.Select(line => LetterShapes.Width(line.Text) * line.Scale).DefaultIfEmpty(0).Max());

        public double Height => Math.Max(1, Lines.Sum(line => line.Scale * Line)) + 0.2;
    }
}
