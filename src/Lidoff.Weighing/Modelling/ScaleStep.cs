using Lidoff.Evidence.Recomputing;

namespace Lidoff.Weighing.Modelling;

/// <summary>Gathers the known lengths of the picture with a given hash.</summary>
public sealed class ScaleStep(DossierTables tables, PictureStep pictures) : Step<string, PictureScale>
{
    /// <inheritdoc/>
    public override string Name => "scale";

    /// <inheritdoc/>
    public override PictureScale Compute(string key, IReads reads)
    {
        var names = tables.Scales.Keys(reads).Where(name => reads.Read(pictures, name) is { Found: true } picture && picture.Sha256 == key).ToList();
        return new([.. names.SelectMany(name => tables.Scales.About(name, reads)).OrderBy(scale => scale.Id)]);
    }
}
