using Lidoff.Bench.Data;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Working;

/// <summary>Looks for what gives a picture its scale, when a person asks for it; nothing is stored. Safe from any thread.</summary>
/// <param name="data">The dossiers.</param>
/// <param name="seats">Who may decode.</param>
public sealed class FindDesk(IBenchData data, PictureSeats seats)
{
    /// <summary>What is in a picture that can give its scale; null where the dossier has no such picture.</summary>
    public async Task<FoundScales?> Find(string dossier, string sha256, CancellationToken stop)
    {
        if (data.View(dossier, open => new Known(open.Workspace.Files.PathOf(sha256), open.Model.Picture(sha256).Name, open.Picture(sha256, open.Model.Picture(sha256).Name))) is not { Header: { Ok: true } header } known) return null;
        return await seats.Take(PictureSeats.IsLarge(header.Value), () => new FoundScales(sha256, TargetSearch.At(known.Path, known.Name, header.Value), RulerProposals.At(known.Path, known.Name, header.Value)), stop).ConfigureAwait(false);
    }

    private sealed record Known(string Path, string Name, Outcome<PictureHeader> Header);
}
