using System.Globalization;
using static Lidoff.Seeing.SeeingSentences;

namespace Lidoff.Seeing.Composing;

/// <summary>What is said of pictures made of pictures: what could not be put together and why, and what is to be known of what was.</summary>
public static class ComposingSentences
{
    /// <summary>Too few pictures.</summary>
    public static string TooFew(ComposeMethod method, int fewest, int given) => method switch
    {
        ComposeMethod.Stack => $"A focus stack takes at least {fewest} slices; {given} were given.",
        ComposeMethod.Stitch => $"Stitching takes at least {fewest} tiles; {given} were given.",
        ComposeMethod.Lights => $"A light set takes at least {fewest} pictures, each lit from another side; {given} were given.",
        _ => $"An average takes at least {fewest} frames; {given} were given.",
    };

    /// <summary>Too many.</summary>
    public static string TooMany(int most, int given) => $"{given} pictures are more than the {most} that are put together at once.";

    /// <summary>One content twice.</summary>
    public static string Twice(string name) => $"{Quoted(name)} was given twice. Take each picture once.";

    /// <summary>Another size.</summary>
    public static string OtherSize(string name, int width, int height, int firstWidth, int firstHeight) =>
        $"{Quoted(name)} has {width} × {height} px, the first picture {firstWidth} × {firstHeight}. Pictures of one camera place have one size: take out what does not belong, or take them anew at one setting.";

    /// <summary>Too many pixels.</summary>
    public static string TooLarge(string name, int width, int height, long most) =>
        $"{Quoted(name)} has {width} × {height} px, more than the {most / 1_000_000} megapixels that this takes in so many pictures at once. Take them at a smaller size, or fewer.";

    /// <summary>Nothing to hold on to.</summary>
    public static string Featureless(string name) => $"{Quoted(name)} shows nothing with corners in it, so no other picture can be laid on it.";

    /// <summary>No two frames lie on one another.</summary>
    public static string AllMoved() => "No two of these frames lie on one another: camera or specimen moved all the time. Clamp both and take the burst again.";

    /// <summary>A frame that moved.</summary>
    public static string FrameMoved(string name, double px) => $"{Quoted(name)} was left out: it lies {Number(px, 1)} px from the others.";

    /// <summary>A frame in which something moved.</summary>
    public static string FrameBlurred(string name) => $"{Quoted(name)} was left out: something in it moved against the rest.";

    /// <summary>A frame of something else.</summary>
    public static string FrameOther(string name) => $"{Quoted(name)} was left out: it does not show what the others show, or is too blurred to tell.";

    /// <summary>What an average came to.</summary>
    public static string Averaged(int frames, double before, double averaged) =>
        $"Mean of {frames} frames; noise measured in it: {Number(averaged, 2)} steps of 255, in a single frame {Number(before, 2)}.";

    /// <summary>How an average was made.</summary>
    public static string AverageSettings(double shift) => $"mean; frames farther than {Number(shift, 2)} px from the largest group left out";

    /// <summary>Nothing changes its focus.</summary>
    public static string NothingInFocus(int places) =>
        $"These pictures are no focus stack: {(places == 0 ? "nothing in them" : $"hardly anything in them ({places} places)")} gets sharper and softer. Move the focus from slice to slice, over all that is to be sharp.";

    /// <summary>No order fits.</summary>
    public static string NoOrder(int places) =>
        $"These slices come in no order of focus: {places} places get sharp more than once along them, and no other order mends it. A slice of another set may be among them, or the specimen moved. Pick the slices of one run again.";

    /// <summary>Sharpness and scale each say something else of the order.</summary>
    public static string OrderOpen() =>
        "These slices do not come in the order of their focus, and it cannot be found: the order by sharpness lets the scale go to and fro. Pick the slices in the order in which they were taken.";

    /// <summary>Another order fits.</summary>
    public static string OrderRepaired(IReadOnlyList<int> order) =>
        $"The slices did not come in the order of their focus and were put into it: {string.Join(", ", order.Select(i => i.ToString(CultureInfo.InvariantCulture)))} of the given ones.";

    /// <summary>A slice that lies nowhere.</summary>
    public static string SliceElsewhere(string name, string before) =>
        $"{Quoted(name)} does not lie on {Quoted(before)}: the camera or the specimen moved between them, or too far in focus lies between them. Take the slices in smaller steps, with both clamped.";

    /// <summary>The scale moved with the focus.</summary>
    public static string Breathing(double percent) => $"The scale changed by {Number(percent, 2)} % through the stack; every slice was laid on the first one.";

    /// <summary>The scale turned back.</summary>
    public static string ScaleTurnsBack(string name) =>
        $"The scale turns back at {Quoted(name)}, which focus alone does not do: zoom or camera may have been touched there. Look at edges near the border of the result.";

    /// <summary>Bare places.</summary>
    public static string LittleTexture(double percent) =>
        $"Only {Number(percent, 0)} % of the picture tells its height by itself; bare places take theirs from what stands around them.";

    /// <summary>Two lights that do not show the same.</summary>
    public static string LightElsewhere(string name) =>
        $"{Quoted(name)} cannot be laid on the first picture of the light set: the camera was moved, or it shows something else. A light set is taken from one place; only the lamp moves.";

    /// <summary>A camera moved too far.</summary>
    public static string LightMoved(string name, double px) =>
        $"{Quoted(name)} was taken {Number(px, 0)} px away from the first picture, too far to be taken back: other slopes are seen from there. Take the light set again with the camera clamped.";

    /// <summary>A small move.</summary>
    public static string LightTakenBack(string name, double px) => $"The camera had moved by {Number(px, 1)} px at {Quoted(name)}; that was taken back.";

    /// <summary>Tiles that lie nowhere.</summary>
    public static string NoOverlap(IReadOnlyList<string> names) =>
        $"{string.Join(", ", names.Select(Quoted))} {(names.Count == 1 ? "overlaps" : "overlap")} no other tile, or shares nothing with corners in it. Neighbouring tiles should share a quarter of their width: add a tile that lies between, or take out what is of another board or zoom.";

    /// <summary>A repeat pattern that fits at several places.</summary>
    public static string RepeatOpen(string first, string second, double px) =>
        $"{Quoted(first)} and {Quoted(second)} fit one another at two places {Number(px, 0)} px apart: what they share is a row of equal parts, and nothing in it tells one period from the next. "
        + "A tile that shows both and the row's end, or another row of tiles that closes a loop, would settle it.";

    /// <summary>A loop that does not close and that nothing mends.</summary>
    public static string LoopOpen(string first, string second, double px) =>
        $"The loop of tiles over {Quoted(first)} and {Quoted(second)} misses itself by {Number(px, 0)} px, and no single pair is to blame for it. One of the tiles may be of another zoom or the board moved under its parts; take these two again with more overlap.";

    /// <summary>A period that a loop set right.</summary>
    public static string PeriodMended(string first, string second) => $"{Quoted(first)} and {Quoted(second)} first fitted one period of a row off; the loop they close set it right.";

    /// <summary>A pair that others contradict.</summary>
    public static string PairDropped(string first, string second) => $"How {Quoted(first)} and {Quoted(second)} lie on one another was left out: two other ways round contradict it.";

    /// <summary>A pair whose overlap is no part of the plane.</summary>
    public static string StandsUp(string first, string second) =>
        $"What {Quoted(first)} and {Quoted(second)} share stands above the board or is too little, and does not lie where the other tiles put it; the two were laid by the others.";

    /// <summary>How well tiles fit.</summary>
    public static string Stitched(int tiles, int pairs, double rest, double? loop, double? umPerPx) =>
        $"{tiles} tiles by {pairs} overlaps: {Length(rest, umPerPx)} left between them (root mean square); "
        + (loop is { } px ? $"the worst closed loop misses itself by {Length(px, umPerPx)}." : "no loop of tiles closes, so nothing checks how they add up.");

    /// <summary>The first tile's scale does not hold.</summary>
    public const string ScaleAnew = "A slant or bend common to all tiles was taken out, so the first tile's scale was not taken over: set a known length in the result.";

    /// <summary>Too many pixels in all tiles.</summary>
    public static string TilesTooLarge(long pixels, long most) => $"The tiles have {pixels / 1_000_000} megapixels together, more than the {most / 1_000_000} that are stitched at once. Stitch rows first, or take smaller pictures.";

    /// <summary>Too large a result.</summary>
    public static string BoardTooLarge(int width, int height, long most) => $"The stitched board would have {width} × {height} px, more than {most / 1_000_000} megapixels. Take smaller pictures.";

    /// <summary>How tiles were laid.</summary>
    public const string StitchedStraight = "a similarity a tile, least squares over all overlaps; one fall-off of light for all, a brightness each; two bands";

    /// <summary>How tiles were laid with what they share.</summary>
    public const string StitchedBent = "a similarity a tile, one lens and one slant for all, least squares over all overlaps; one fall-off of light for all, a brightness each; two bands";

    /// <summary>Progress.</summary>
    public static string Features(string name) => $"Looking for corners in {Quoted(name)}";

    /// <summary>Progress.</summary>
    public static string Pairing(string first, string second) => $"Laying {Quoted(second)} on {Quoted(first)}";

    /// <summary>Progress.</summary>
    public static string Blending() => "Blending the tiles";

    private static string Length(double px, double? umPerPx) => umPerPx is { } um ? $"{Number(px * um, 1)} µm ({Number(px, 2)} px)" : $"{Number(px, 2)} px";

    /// <summary>Progress.</summary>
    public static string Comparing(string name) => $"Comparing {Quoted(name)}";

    /// <summary>Progress.</summary>
    public static string Adding(string name) => $"Adding {Quoted(name)}";

    /// <summary>Progress.</summary>
    public static string Laying(string name) => $"Laying {Quoted(name)} on the slice before it";

    /// <summary>Progress.</summary>
    public static string Sharpness(string name) => $"Looking where {Quoted(name)} is sharp";

    /// <summary>Progress.</summary>
    public static string Fusing(string name) => $"Taking what is sharp out of {Quoted(name)}";

    /// <summary>Progress.</summary>
    public static string Evening(string name) => $"Evening out the light of {Quoted(name)}";
}
