using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Naming.Kinds;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Kinds;
using Lidoff.Reckoning.Bound;
using Lidoff.Seeing.Kinds;
using Lidoff.Tracing.Kinds;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Becauses;

/// <summary>The payloads of a view's live entries by id, for the kinds that <see cref="EntryWords"/> has sentences for.</summary>
public sealed class EntryPayloads
{
    private readonly Dictionary<EntryId, object> payloads = [];

    /// <summary>Gathers them; linear in the entries.</summary>
    public EntryPayloads(IDossierView view)
    {
        Guard.NotNull(view);
        Take<DossierOpened>(view);
        Take<FileAdded>(view);
        Take<ScaleSighting>(view);
        Take<LengthSighting>(view);
        Take<LandmarkSighting>(view);
        Take<MarkSighting>(view);
        Take<ReadingSighting>(view);
        Take<BodySighting>(view);
        Take<PitchSighting>(view);
        Take<SpotSighting>(view);
        Take<PictureSighting>(view);
        Take<ComposedSighting>(view);
        Take<MatchSighting>(view);
        Take<BurstSighting>(view);
        Take<RecordingSighting>(view);
        Take<MomentSighting>(view);
        Take<StillSighting>(view);
        Take<ReckonBinding>(view);
        Take<IdentityDecision>(view);
        Take<SpecimensAlike>(view);
        Take<PinsSighting>(view);
        Take<BusSighting>(view);
        Take<IdentitySighting>(view);
        Take<SupplySighting>(view);
        Take<MassSighting>(view);
        Take<TouchSighting>(view);
        Take<NetDrawn>(view);
        Take<RailDrawn>(view);
        Take<PadSighting>(view);
        Take<SpecimenSighting>(view);
        Take<StateSighting>(view);
        Take<StepSighting>(view);
        Take<StepPlanned>(view);
        Take<BenchLeft>(view);
        Take<CellSighting>(view);
        Take<QuestionAsked>(view);
    }

    /// <summary>The payload of an entry; null where it does not count or has no sentence of its own.</summary>
    public object? Of(EntryId id) => payloads.GetValueOrDefault(id);

    private void Take<T>(IDossierView view)
        where T : class
    {
        foreach (var sighting in view.Live<T>()) payloads[sighting.Id] = sighting.Value;
    }
}
