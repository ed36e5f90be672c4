using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Kinds;
using Lidoff.Reckoning.Bound;
using Lidoff.Seeing.Kinds;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Weighing.Modelling;

/// <summary>What the model reads of a dossier: one table a kind, each grouped by what a step asks for.</summary>
public sealed class DossierTables
{
    /// <summary>The one group of kinds that concern the whole dossier.</summary>
    public const string Whole = "";

    /// <summary>Added files, by name, by hash and by entry: the three ways a picture may be named.</summary>
    public SightingTable<FileAdded> Files { get; } = new("files", file => [file.Name, file.Sha256]);

    /// <summary>All files, for references by the start of a hash.</summary>
    public SightingTable<FileAdded> AllFiles { get; } = new("all files", _ => [Whole]);

    /// <summary>Scales, by the picture as it was named.</summary>
    public SightingTable<ScaleSighting> Scales { get; } = new("scales", scale => [scale.Picture]);

    /// <summary>Landmarks of boards, all in one group: pictures lie on one another over others.</summary>
    public SightingTable<LandmarkSighting> Landmarks { get; } = new("landmarks", _ => [Whole]);

    /// <summary>What was said of pictures as a whole, all in one group.</summary>
    public SightingTable<PictureSighting> Pictures { get; } = new("pictures", _ => [Whole]);

    /// <summary>Pictures made of pictures, by the hash of what was made.</summary>
    public SightingTable<ComposedSighting> Composed { get; } = new("composed", composed => [composed.Picture]);

    /// <summary>What machines saw in pictures besides anything pointed at, by the picture's hash.</summary>
    public SightingTable<LookSighting> Looks { get; } = new("looks", look => [look.Picture]);

    /// <summary>Lengths, by spot.</summary>
    public SightingTable<LengthSighting> Lengths { get; } = new("lengths", length => [length.Spot]);

    /// <summary>Circles, pitches, angles and areas clicked in pictures, by spot.</summary>
    public SightingTable<ClickedShape> Shapes { get; } = new("shapes", shape => [shape.Spot]);

    /// <summary>Bodies, by spot.</summary>
    public SightingTable<BodySighting> Bodies { get; } = new("bodies", body => [body.Spot]);

    /// <summary>Pitches, by spot.</summary>
    public SightingTable<PitchSighting> Pitches { get; } = new("pitches", pitch => [pitch.Spot]);

    /// <summary>Marks, by spot.</summary>
    public SightingTable<MarkSighting> Marks { get; } = new("marks", mark => [mark.Spot]);

    /// <summary>Marks as machines read them, by spot.</summary>
    public SightingTable<ReadingSighting> Readings { get; } = new("readings", reading => [reading.Spot]);

    /// <summary>Spots, by spot.</summary>
    public SightingTable<SpotSighting> Spots { get; } = new("spots", spot => [spot.Spot]);

    /// <summary>Bus answers, by spot.</summary>
    public SightingTable<BusSighting> Buses { get; } = new("buses", bus => [bus.Spot]);

    /// <summary>Identity registers, by spot.</summary>
    public SightingTable<IdentitySighting> Identities { get; } = new("identities", identity => [identity.Spot]);

    /// <summary>Counted pins, by spot.</summary>
    public SightingTable<PinsSighting> Pins { get; } = new("pins", pins => [pins.Spot]);

    /// <summary>Supplies, by spot.</summary>
    public SightingTable<SupplySighting> Supplies { get; } = new("supplies", supply => [supply.Spot]);

    /// <summary>Masses, by spot.</summary>
    public SightingTable<MassSighting> Masses { get; } = new("masses", mass => [mass.Spot]);

    /// <summary>Specimens, all in one group: their own mass is the mass of the whole.</summary>
    public SightingTable<SpecimenSighting> Specimens { get; } = new("specimens", _ => [Whole]);

    /// <summary>States before opening, by name.</summary>
    public SightingTable<StateSighting> States { get; } = new("states", state => [state.Name]);

    /// <summary>Decisions on identities, by spot.</summary>
    public SightingTable<Naming.Kinds.IdentityDecision> Decisions { get; } = new("decisions", decision => [decision.Spot]);

    /// <summary>Which specimens are said to be alike, by spot.</summary>
    public SightingTable<Naming.Kinds.SpecimensAlike> Alike { get; } = new("alike", alike => [alike.Spot]);

    /// <summary>Reckonings, by designator.</summary>
    public SightingTable<ReckonBinding> Reckonings { get; } = new("reckonings", binding => [binding.Reckoning]);

    /// <summary>All of them.</summary>
    public IReadOnlyList<ISightingTable> All =>
    [
        Files, AllFiles, Scales, Landmarks, Pictures, Composed, Looks, Lengths, Shapes, Bodies, Pitches, Marks, Readings, Spots, Buses, Identities, Pins, Supplies, Masses, Specimens, States, Decisions, Alike, Reckonings,
    ];
}
