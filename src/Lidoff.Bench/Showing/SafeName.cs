namespace Lidoff.Bench.Showing;

/// <summary>A file's name as a browser sent it, without the folders somebody may have put in front.</summary>
internal static class SafeName
{
    private const int Most = 255;

    /// <summary>The last part, cut to 255 characters; null when nothing is left. The store never makes a path of it.</summary>
    public static string? Of(string? name)
    {
        var last = (name ?? "").Split('/', '\\')[^1].Trim();
        if (last is "" or "." or "..") return null;
        return last.Length > Most ? last[..Most] : last;
    }
}
