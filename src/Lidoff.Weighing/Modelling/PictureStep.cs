using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;

namespace Lidoff.Weighing.Modelling;

/// <summary>Which stored file a picture reference means: a file name, a hash, the start of one (8 digits or more), or the file's entry.</summary>
public sealed class PictureStep(DossierTables tables) : Step<string, PictureAnswer>
{
    private const int ShortestPrefix = 8;

    /// <inheritdoc/>
    public override string Name => "picture";

    /// <inheritdoc/>
    public override PictureAnswer Compute(string key, IReads reads)
    {
        var found = tables.Files.About(key, reads);
        if (found.Count == 0 && key.Length >= ShortestPrefix && key.All(char.IsAsciiHexDigitLower))
        {
            found = [.. tables.AllFiles.About(DossierTables.Whole, reads).Where(file =>
                file.Value.Sha256.StartsWith(key, StringComparison.Ordinal) || file.Id.Hex.StartsWith(key, StringComparison.Ordinal))];
        }

        // The same content added twice, under one name or two, is one picture.
        var contents = found.Select(file => file.Value.Sha256).Distinct(StringComparer.Ordinal).Count();
        if (contents == 1) return Answer(found[0]);
        return new("", "", default, contents == 0 ? WeighingSentences.NoPicture(key) : WeighingSentences.SeveralPictures(key, contents));
    }

    private static PictureAnswer Answer(Sighting<FileAdded> file) => new(file.Value.Name, file.Value.Sha256, file.Id, null);
}
