using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading;

/// <summary>Every sentence of mark reading that a person reads.</summary>
public static class ReadingSentences
{
    // A choice of ours.
    private const double UprightDeg = 10;

    /// <summary>A reader's card lacks its symbols.</summary>
    public const string NoAlphabet = "“alphabet” is missing.";

    /// <summary>No text was found.</summary>
    public const string NoText = "No text was found here. A mark needs about 12 px of height for each character, and light from the side brings a worn one out.";

    /// <summary>Which way up it is was not clear.</summary>
    public const string EitherWayUp = "Which way up this reads is not clear; it was read both ways, and the likelier one is given first.";

    /// <summary>Why a picture was left out of a reading: it shows no line of the others.</summary>
    public const string OtherMark = "it has no line of text in common with the others";

    /// <summary>Why a picture was left out of a reading: nothing could be read in it.</summary>
    public const string NothingRead = "nothing could be read there";

    /// <summary>Two pictures have no line in common.</summary>
    public static Fault NoCommonLine { get; } = new("pictures", "pictures of one mark", "These pictures have no line of text in common: they do not show one mark, or one of them is not readable. They were not combined.");

    /// <summary>A file of the networks is not there.</summary>
    public static Fault NetworkMissing(string file, string folder) => new(
        file, "a network that comes with the program", $"{file} is missing in {folder}: marks cannot be read by the machine until it is put back. Everything else works, and you can type what you read.");

    /// <summary>A network is not the one its card describes.</summary>
    public static Fault NetworkAltered(string file, string found, string expected) => new(
        file,
        "the network its card describes",
        $"{file} was altered or not copied whole: its SHA-256 begins with {found[..12]}, its card says {expected[..12]}. Marks cannot be read by the machine until it is put back; everything else works.");

    /// <summary>A network cannot be read or is another's.</summary>
    public static Fault NetworkUnread(string file, string why) => new(file, "a network that can be run", $"{file} cannot be run ({Plain(why)}): marks cannot be read by the machine until it is put back. Everything else works.");

    /// <summary>A card cannot be read.</summary>
    public static Fault CardUnread(string card, string why) => new(card, "a card with name, version, sha256 and, for a reader, alphabet", $"{card} cannot be read: {Plain(why)} Marks cannot be read by the machine until it is put back; everything else works.");

    /// <summary>The network runtime does not load.</summary>
    public static Fault NoRuntime(string why) => new("onnxruntime", "ONNX Runtime's library", $"ONNX Runtime does not load ({Plain(why)}): marks cannot be read by the machine. Everything else works, and you can type what you read.");

    /// <summary>A crop is too small to hold a character.</summary>
    public static Fault TooSmall(string name, double width, double height, int least) => new(
        name,
        string.Create(CultureInfo.InvariantCulture, $"at least {least} px along the longer side"),
        string.Create(CultureInfo.InvariantCulture, $"{name}: {width:0.#} × {height:0.#} px are too few to read a mark in; a character needs about 12 px of height. Take the picture closer, or a larger box."));

    /// <summary>A box that lies beside the picture.</summary>
    public static Fault BoxOutside(string name, int width, int height) => new(
        "--box", "a box within the picture", string.Create(CultureInfo.InvariantCulture, $"{name}: the box lies outside of the picture, which is {width} × {height} px."));

    /// <summary>A box that is none.</summary>
    public static Fault NoBox(string given) => new("--box", "x,y,w,h in px with w and h above zero", $"--box wants x,y,w,h in px, such as 120,80,300,200; {SeeingSentences.Quoted(given)} is none.");

    /// <summary>More lines than any mark has.</summary>
    public static string ManyLines(int lines) =>
        string.Create(CultureInfo.InvariantCulture, $"{lines} lines were found, more than a part carries: a label, a page or a whole board. All of them were read; take one part by a box around it to read it alone, or have the parts of a board found.");

    /// <summary>More lines than are read at once.</summary>
    public static string TooManyLines(int lines, int read) =>
        string.Create(CultureInfo.InvariantCulture, $"{lines} lines were found, more than a part carries: a label, a page or a whole board. The first {read} were read; take one part by a box around it to read the others.");

    /// <summary>Lines were found and none of them could be read.</summary>
    public static string NothingLegible(int lines) =>
        (lines == 1 ? "Something like a line of text was found, and nothing of it could be read." : string.Create(CultureInfo.InvariantCulture, $"Something like {lines} lines of text was found, and nothing of them could be read."))
        + " Take one part alone, by a box around it or from closer up; light from the side brings a worn mark out.";

    /// <summary>A mark that does not stand upright in the picture; empty within a few degrees, which are how a picture is taken and not how the part lies.</summary>
    public static string Turned(double turn) =>
        Math.Abs(Math.IEEERemainder(turn, 360)) <= UprightDeg ? "" : string.Create(CultureInfo.InvariantCulture, $"It is read after turning the picture by {turn:0.#}° clockwise.");

    /// <summary>A dot where most packages have pin 1.</summary>
    public const string DotAgrees = "The pin-1 dot lies at the lower left of the upright mark, where pin 1 is on most packages.";

    /// <summary>A dot at the other left corner.</summary>
    public const string DotAtUpperLeft = "The pin-1 dot lies at the upper left of the upright mark; pin 1 is at the lower left on most packages, at the upper left on some.";

    /// <summary>A dot at the corner opposite to the usual one.</summary>
    public const string DotOpposite = "The pin-1 dot lies at the upper right of the upright mark, opposite to where pin 1 is on most packages: the mark may read the other way up, or the dot is no pin-1 dot.";

    /// <summary>A dot at the other right corner.</summary>
    public const string DotAtLowerRight = "The pin-1 dot lies at the lower right of the upright mark, where pin 1 seldom is: look whether it is a pin-1 dot, and which way up the mark reads.";

    /// <summary>A dot that is in no corner.</summary>
    public static string DotBetween(string nearest) => $"The pin-1 dot lies between two corners of the upright mark, nearest to the {nearest} one: it does not tell which way up the mark reads.";

    /// <summary>A mark that is kept as a place.</summary>
    public static string Emblem(Finding.PictureRegion outline)
    {
        var (x, y) = (outline.Corners.Min(corner => corner.X), outline.Corners.Min(corner => corner.Y));
        return string.Create(CultureInfo.InvariantCulture, $"a mark that is no text, at {x:0},{y:0}, {outline.Corners.Max(corner => corner.X) - x:0} × {outline.Corners.Max(corner => corner.Y) - y:0} px");
    }

    /// <summary>Bands in the place of text.</summary>
    public static string BandsSeen(string bands) => $"No text was read; colour bands were seen: {bands}.";

    /// <summary>Colour bands asked of a picture without colours.</summary>
    public static Fault BandsWithoutColour(string name) => new(name, "a picture in colour", $"{name} has no colours: bands cannot be told apart in it.");

    /// <summary>A body too short to show bands.</summary>
    public static Fault BandsTooSmall(string name, double length, int least) => new(
        name,
        string.Create(CultureInfo.InvariantCulture, $"at least {least} px along the body"),
        string.Create(CultureInfo.InvariantCulture, $"{name}: the body is {length:0} px long, too few to tell its bands; {least} are the least, 100 are better."));

    /// <summary>No bands on what was looked at.</summary>
    public static Fault NoBands(string name) => new(name, "an axial part with colour bands", $"No colour bands were found in {name}. Give a box around one part, with its body along the longer side or with a little of an even ground around it.");

    /// <summary>More bands than any code has.</summary>
    public static Fault ManyBands(string name, int bands, int most) => new(
        name,
        string.Create(CultureInfo.InvariantCulture, $"at most {most} bands"),
        string.Create(CultureInfo.InvariantCulture, $"{bands} bands were found in {name}, more than any code has: give a box around one part alone."));

    /// <summary>A picture that a reading does without, and why.</summary>
    public static string LeftOut(string picture, string why) => $"{SeeingSentences.Quoted(picture)} was left out: {why}.";

    /// <summary>No body where a spot was pointed at.</summary>
    public static Fault NoBody(string spot, string picture) => new(
        picture, "a body where the spot was pointed at", $"No body was found in {SeeingSentences.Quoted(picture)} where {spot} was pointed at, nor text under that place. Draw a box around the mark, outline the body by three of its corners, point at the mark itself, or take a picture from closer up.");

    /// <summary>Where a mark was read without its body.</summary>
    public static string UnderTheClick(string picture) => $"No body was found in {SeeingSentences.Quoted(picture)}: the text that was pointed at was read.";

    /// <summary>A board without a mark that can be read.</summary>
    public const string NoParts = "No mark was found that can be read. Characters of a part need about 12 px of height in the picture: take the board in several pictures from closer up, with light from the side.";

    /// <summary>More marks than are looked at.</summary>
    public static string PartsLeft(int left) => string.Create(CultureInfo.InvariantCulture, $"{left} more texts were found; those that read best are given.");

    /// <summary>A picture that was not read at its own size.</summary>
    public static string PartsShrunk(int longest) => string.Create(CultureInfo.InvariantCulture, $"The picture is larger than {longest} px and was read shrunk: take its parts in pictures of their own to have small marks read.");

    /// <summary>What was found around a place is a board.</summary>
    public static Fault BoardNotBody(string spot, string picture) => new(
        picture, "a body of one part alone", $"What was found in {SeeingSentences.Quoted(picture)} around {spot} holds more than one part: it is a board and no body. Draw a box around the mark of {spot}, outline its body by three of its corners, or point at the mark itself.");

    // Another library's words: one line of them.
    private static string Plain(string why) => SeeingSentences.Quoted(why.ReplaceLineEndings(" "))[1..^1];
}
