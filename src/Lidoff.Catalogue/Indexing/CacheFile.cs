namespace Lidoff.Catalogue.Indexing;

/// <summary>Brings a file into a cache folder whole or not at all: written under a name of its own, then renamed over.</summary>
internal static class CacheFile
{
    /// <summary>Calls <paramref name="write"/> with a temporary path and renames what it wrote to <paramref name="path"/>. False when the folder cannot be written; a cache is never needed.</summary>
    public static bool Put(string path, Action<string> write)
    {
        var folder = Path.GetDirectoryName(path)!;
        try
        {
            Directory.CreateDirectory(folder);
            var temporary = Path.Combine(folder, Path.GetRandomFileName() + ".part");
            try
            {
                write(temporary);
                File.Move(temporary, path, overwrite: true);
                return true;
            }
            finally
            {
                File.Delete(temporary);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Removes files of the same sort that were built from other data.</summary>
    public static void Forget(string path, string pattern)
    {
        try
        {
            foreach (var old in Directory.EnumerateFiles(Path.GetDirectoryName(path)!, pattern))
            {
                if (old != path) File.Delete(old);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Another program may hold it; it goes with the next change.
        }
    }
}
