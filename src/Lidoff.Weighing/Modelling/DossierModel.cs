using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Failing;
using Lidoff.Reckoning.Bound;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// A dossier as one live model: fed with what the fold says changed, asked for values by reference. Everything it says is computed
/// from sightings and decisions, kept while it holds, and never stored as truth. One writer at a time.
/// </summary>
public sealed class DossierModel
{
    private readonly InputTable<string, string> catalogue = new("catalogue", version => version);
    private readonly Dictionary<EntryId, int> positions = [];
    private readonly PictureStep pictures;
    private readonly TakenScaleStep scales;
    private readonly FittedPictureStep fitted;
    private readonly BoardStep boards;
    private readonly PictureBoardStep pictureBoards;
    private readonly ShapeStep shapes;
    private readonly LengthStep lengths;
    private readonly EvidenceStep evidence;
    private readonly IdentityStep identities;
    private readonly ReckoningStep reckonings;
    private readonly ValueStep values;
    private long version = -1;

    /// <summary>An empty model.</summary>
    /// <param name="ranker">The naming engine; made when a name is first asked for.</param>
    /// <param name="catalogueVersion">Changes when the catalogue does.</param>
    /// <param name="frame">Size of a stored picture by its hash; null where it is no picture.</param>
    public DossierModel(Lazy<Ranker> ranker, string catalogueVersion, Func<string, PictureFrame?> frame)
    {
        pictures = new(Tables);
        var own = new ScaleStep(Tables, pictures);
        scales = new(Tables, own);
        var specimens = new PictureSpecimenStep(Tables, pictures);
        boards = new(Tables, pictures, own, new SideStep(Tables, pictures), specimens, frame);
        pictureBoards = new(Tables, specimens, boards);
        fitted = new(Tables, scales, pictures, new(Tables, pictures, own, new(Tables, own, frame), frame), frame);
        shapes = new(Tables, pictures, fitted, pictureBoards, frame);
        lengths = new(Tables, pictures, fitted, pictureBoards, shapes, frame);
        evidence = new(Tables, lengths, shapes);
        identities = new(Tables, evidence, ranker, catalogue);
        reckonings = new(Tables);
        values = new(Tables, lengths, shapes, identities, reckonings);
        reckonings.Values = values;
        Graph.Set(catalogue, DossierTables.Whole, catalogueVersion);
    }

    /// <summary>The graph, for counts.</summary>
    public RecomputeGraph Graph { get; } = new();

    /// <summary>What it reads.</summary>
    public DossierTables Tables { get; } = new();

    /// <summary>
    /// Takes in a change of the fold: only groups with something new or gone are set. The first call, or one after a gap, takes in
    /// everything that counts.
    /// </summary>
    public void Feed(Fold fold)
    {
        Guard.NotNull(fold);
        var change = version < 0 ? null : fold.Since(version);
        Guard.That(change is not null || version < 0, "a model that is fed at least once in every thousand changes");
        change ??= fold.Since(0) ?? throw new InvalidOperationException("a fold that was fed by more than a thousand steps before its model");
        Feed(fold.View, change);
    }

    private void Feed(IDossierView view, FoldChange change)
    {
        if (change.Reordered) positions.Clear();
        for (var i = positions.Count; i < view.Entries.Count; i++) positions[view.Entries[i].Entry.Id] = i;
        var added = change.Added.ToLookup(entry => entry.Type);
        var removed = change.Removed.ToLookup(entry => entry.Type);
        foreach (var table in Tables.All.Where(table => change.Reordered || added.Contains(table.Type) || removed.Contains(table.Type)))
        {
            table.Feed(Graph, added[table.Type], removed[table.Type], id => positions[id], change.Reordered);
        }

        version = change.To;
    }

    /// <summary>What a reference stands for.</summary>
    public ModelValue Value(string reference) => Graph.Get(values, reference);

    /// <summary>True when a reference has a value; words that are no reference have none.</summary>
    public bool Has(string reference) => Guard.NotNull(reference).Contains(':', StringComparison.Ordinal) && Value(reference).Missing is null;

    /// <summary>The lines of evidence about a length.</summary>
    public LengthBelief Length(string spot, string what) => Graph.Get(lengths, new LengthKey(spot, what));

    /// <summary>The readings of a shape clicked in pictures.</summary>
    public ShapeBelief Shape(string spot, ShapeKind shape, string what) => Graph.Get(shapes, new ShapeKey(spot, shape, what));

    /// <summary>Who sits at a spot.</summary>
    public IdentityAnswer Identity(string spot) => Graph.Get(identities, spot);

    /// <summary>A bound reckoning, null when nobody has noted it.</summary>
    public BoundReckoning? Reckoning(string designator) => Graph.Get(reckonings, designator);

    /// <summary>Which file a picture reference means.</summary>
    public PictureAnswer Picture(string reference) => Graph.Get(pictures, reference);

    /// <summary>The boards of a specimen, with its pictures laid on them.</summary>
    public SpecimenBoards Boards(string specimen) => Graph.Get(boards, specimen);

    /// <summary>The board of a picture by its hash; null where no landmark was pointed at in it.</summary>
    public PictureBoard? Board(string sha256) => Graph.Get(pictureBoards, sha256);

    /// <summary>True when lengths clicked in a picture come out: it has a known length, or lies on a board that has one.</summary>
    public bool Measures(string sha256) => Scale(sha256).References.Count > 0 || Board(sha256) is { Laid.ScaleKnown: true } board && board.Laid.Picture(sha256) is not null;

    /// <summary>The known lengths that hold in a picture by its hash; they may be those of the picture it was made of.</summary>
    public PictureScale Scale(string sha256) => Graph.Get(scales, sha256);

    /// <summary>A picture by its hash with its cameras fitted; null where it has no known length or is no picture.</summary>
    public FittedPicture? Fitted(string sha256) => Graph.Get(fitted, sha256);
}
