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
