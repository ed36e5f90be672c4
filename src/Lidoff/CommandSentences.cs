using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Weighing.Modelling;

namespace Lidoff;

/// <summary>Every sentence the command line itself says about bad input; the rooms say theirs.</summary>
public static class CommandSentences
{
    /// <summary>A file argument that cannot be opened.</summary>
    public static Fault NoInput(string argument, Exception trouble) => new(
        argument,
        "a file that can be read",
        trouble switch
        {
            FileNotFoundException or DirectoryNotFoundException => $"There is no file '{argument}'.",
            UnauthorizedAccessException => $"'{argument}' is a folder or may not be read.",
            _ => $"'{argument}' cannot be read: {trouble.Message}",
        });

    /// <summary>A workspace that is not there where a command only reads.</summary>
    public static Fault NoWorkspace(string folder) => new(
        "--workspace", "a folder that holds a workspace", $"There is no workspace in {folder} yet; `lidoff new DOSSIER` begins one.");

    /// <summary>How many lines of a note were stored.</summary>
    public static string Noted(int stored, int refused) => refused == 0
        ? string.Create(CultureInfo.InvariantCulture, $"{stored} noted.")
        : string.Create(CultureInfo.InvariantCulture, $"{stored} noted, {refused} refused; the refused lines are above and nothing of them was stored.");

    /// <summary>What a look at a picture brought.</summary>
    public static string Looked(string picture, Seeing.Kinds.LookSighting look) =>
        $"{picture}: {(look.Edges.Count > 0 ? "its straight edges tell how the camera stood" : "its edges tell nothing of the camera")}{(look.WordsMirrored ? "; its words read mirrored" : "")}";

    /// <summary>Every picture with a known length was looked at before.</summary>
    public static string NothingToLookAt => "No picture with a known length is left to look at.";

    /// <summary>A line that was read, with how probable it is and what else it may be.</summary>
    public static string Read(string text, IReadOnlyList<Seeing.Reading.Lattices.LineText> readings)
    {
        var others = readings.Skip(1).Where(each => each.P >= 0.02 && each.Text.Length > 0).Take(3).Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Text} {ValueText.Percent(each.P)}")).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{text}  {ValueText.Percent(readings[0].P)}{(others.Count > 0 ? "  or " + string.Join(", ", others) : "")}");
    }

    /// <summary>A reading of a value code, where it was read otherwise than given how, and its odds.</summary>
    public static string Value(string code, string reading, string how, double p) => $"{code}: {reading}{(how.Length > 0 ? ", " + how : "")}, {ValueText.Percent(p)}";

    /// <summary>What a mark says that was read, taken as a value code.</summary>
    public static string ReadAsValue(string reading, string how, double p) => $"as a value code: {reading}{(how.Length > 0 ? ", " + how : "")}, {ValueText.Percent(p)}";

    /// <summary>How a code was read that stands on its head.</summary>
    public static string OnHead(string text) => $"on its head, as {text}";

    /// <summary>How bands were read that begin at the other end.</summary>
    public const string FromEnd = "from the last band to the first";

    /// <summary>Bands have no way up that is known.</summary>
    public const string ReadBandsUpright = "--upright and --parts are for marks; --bands reads one part, from either end.";

    /// <summary>Bands that are no code.</summary>
    public const string NoBandValue = "These bands are no code from either end.";

    /// <summary>Whose mark was read; lines and bands together.</summary>
    public static string ReadOn(string spot, string specimen, int read) => $"{spot}{(specimen.Length > 0 ? $" of specimen {specimen}" : "")}:{(read == 0 ? " nothing was read" : "")}";

    /// <summary>A mark that reads as it did.</summary>
    public static string ReadBefore(string spot) => $"{spot} was read before, by the same networks in the same pictures: it is the same reading, and nothing was stored anew.";

    /// <summary>Marks that are passed over, and why.</summary>
    public static string MarksLeft(Telling.Dossiers.MarksLeft left)
    {
        var passed = new List<string>();
        if (left.Read > 0) passed.Add(string.Create(CultureInfo.InvariantCulture, $"{left.Read} read by these networks before"));
        if (left.ByPeople > 0) passed.Add(string.Create(CultureInfo.InvariantCulture, $"{left.ByPeople} read by a person (--marked reads them too)"));
        if (left.Unread > 0) passed.Add(string.Create(CultureInfo.InvariantCulture, $"{left.Unread} that could not be read before, where nothing has changed since (--spot tries them again)"));
        return (left.Wanted.Count == 0 ? "No mark is left to read" : "Passed over") + (passed.Count > 0 ? ": " + string.Join(", ", passed) : left.Wanted.Count == 0 ? ": no spot is seen in a picture" : "") + ".";
    }

    /// <summary>A spot whose mark cannot be read, since no picture shows it.</summary>
    public static Fault SpotUnseen(string spot) => new(spot, "a spot that was pointed at in a picture", $"No picture of the dossier shows {Seeing.SeeingSentences.Quoted(spot)}: point at it in one, or outline its body.");

    /// <summary>An option that a command does not have.</summary>
    public static string UnknownOption(string option) => $"There is no option {Seeing.SeeingSentences.Quoted(option)}; a name that begins with a dash is given after --.";

    /// <summary>An argument that a command cannot do without.</summary>
    public static string MissingArgument(string name, string? what) => what is { Length: > 0 } ? $"{name} is missing: {char.ToLowerInvariant(what[0])}{what[1..]}" : $"{name} is missing.";

    /// <summary>An option without its value.</summary>
    public static string MissingValue(string option) => $"{option} is given without its value.";

    /// <summary>An option that wants a number and was given something else.</summary>
    public static string NoNumber(string option, string value) => $"{option} wants a number; {Seeing.SeeingSentences.Quoted(value)} is none that it takes.";

    /// <summary>A file without a byte in it that was put into a dossier.</summary>
    public static string EmptyFile(string name) => $"{Seeing.SeeingSentences.Quoted(name)} is empty (0 bytes); it is kept as it is, and there is nothing in it to look at.";

    /// <summary>Options of pictures beside those of a dossier.</summary>
    public const string ReadPicturesOnly = "--box, --upright, --bands and --parts are for pictures; --spot and --all read a dossier's marks where its spots lie.";

    /// <summary>A part of a picture where the whole is meant.</summary>
    public const string ReadPartsWhole = "--parts looks through whole pictures at any turn; --box and --upright read one mark.";

    /// <summary>A part that was found and read.</summary>
    public static string PartAt(Seeing.Reading.Parts.FoundPart part) => string.Create(
        CultureInfo.InvariantCulture, $"{(part.HasBody ? "part" : "text without a body")} at {part.Region.Middle.X:0}, {part.Region.Middle.Y:0} ({part.Region.Width:0} × {part.Region.Height:0} px):");

    /// <summary>Several names where one dossier is meant.</summary>
    public const string ReadOneDossier = "--spot and --all want one name, that of the dossier.";

    /// <summary>Two ways to say which spots.</summary>
    public const string ReadSpotOrAll = "Either --spot or --all: which marks are to be read?";

    /// <summary>An option that says nothing by itself.</summary>
    public const string ReadMarkedWithAll = "--marked goes with --all; a spot named by --spot is read in any case.";
}
