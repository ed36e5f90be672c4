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
    public static string Read(Seeing.Reading.Engine.ReadLine line)
    {
        var others = line.Reading.Readings.Skip(1).Where(each => each.P >= 0.02 && each.Text.Length > 0).Take(3).Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Text} {ValueText.Percent(each.P)}")).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{line.Reading.Text}  {ValueText.Percent(line.Reading.P)}{(others.Count > 0 ? "  or " + string.Join(", ", others) : "")}");
    }
}
