using System.Globalization;

namespace Lidoff.Evidence.Watching;

/// <summary>What a person reads about a watched folder.</summary>
public static class WatchSentences
{
    /// <summary>Taken in.</summary>
    public static string Taken(string name) => $"{Quoted(name)} was taken in from the watched folder.";

    /// <summary>The same content came before.</summary>
    public static string Known(string name) => $"{Quoted(name)} is in the dossier already and was not taken again.";

    /// <summary>No content.</summary>
    public static string Empty(string name) => $"{Quoted(name)} is empty and was not taken. It is looked at again once something is written to it.";

    /// <summary>Over the cap.</summary>
    public static string TooLarge(string name, long bytes, long most) =>
        string.Create(CultureInfo.InvariantCulture, $"{Quoted(name)} has {bytes} bytes, more than the {most} that the watch takes; add it with `lidoff add`. It stays where it is.");

    /// <summary>The system does not give it.</summary>
    public static string Forbidden(string name) => $"{Quoted(name)} may not be read by this user; it stays where it is.";

    /// <summary>The folder went away.</summary>
    public static string Gone(string folder) => $"The watched folder {Quoted(folder)} cannot be read: it is gone, or its card or share is. It is looked for again.";

    /// <summary>The folder came back.</summary>
    public static string Back(string folder) => $"The watched folder {Quoted(folder)} is there again.";

    /// <summary>No such folder to begin with.</summary>
    public static string NoFolder(string folder) => $"There is no folder {Quoted(folder)} that can be watched; give the whole path of one that is there.";

    /// <summary>The folder is Lidoff's own.</summary>
    public static string OwnFolder(string folder) => $"The folder {Quoted(folder)} belongs to the workspace itself; watch the folder that the microscope writes to.";

    private static string Quoted(string text)
    {
        var clean = new string([.. text.Take(120).Select(c => char.IsControl(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format ? '·' : c)]);
        return "“" + clean + (text.Length > 120 ? "…" : "") + "”";
    }
}
