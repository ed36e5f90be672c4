using Lidoff.Catalogue;
using Lidoff.Catalogue.Importing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Evidence.Store;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Moves;
using Lidoff.Weighing.Quarrels;
using Lidoff.Weighing.Questions;

namespace Lidoff.Telling.Dossiers;

/// <summary>A dossier with its live model: what <c>claims</c>, <c>tell</c> and the bench work on.</summary>
public sealed class OpenDossier
{
    private readonly Dictionary<string, Outcome<PictureHeader>> headers = new(StringComparer.Ordinal);
    private readonly PerView<IReadOnlyList<Claim>> claims;
    private readonly PerView<IReadOnlyList<TiedClaim>> tied;
    private readonly PerView<IReadOnlyList<Quarrel>> quarrels;
    private readonly PerView<ValueList<NextMove>> moves;
    private readonly PerView<ValueList<BoardQuestion>> questions;
    private readonly PerView<IReadOnlySet<string>> looked;

    private OpenDossier(Workspace workspace, DossierSession session, DossierModel model)
    {
        Workspace = workspace;
        Session = session;
        Model = model;
        claims = new(view => ReportBuilder.Claims(view, Model, Program));
        tied = new(_ => TiedClaims.Of(Claims));
        quarrels = new(view => QuarrelBook.Find(view, Model));
        moves = new(view => NextMoves.Of(view, Model, Tied, Quarrels));
        questions = new(view => QuestionBoard.Of(view, Model, Tied, Quarrels));
        looked = new(view => view.Entries.Where(each => each.Entry.Kind == LookKind.Word && each.Payload is not null)
            .Select(each => LookKind.PictureOf(each.Payload!.Value)).ToHashSet(StringComparer.Ordinal));
    }

    /// <summary>This program's version as publications remember it: number and hash of the code that makes claims.</summary>
    public static string Program { get; } = $"{typeof(OpenDossier).Assembly.GetName().Version?.ToString(3)}+{StepVersion.Of(typeof(ReportBuilder).Assembly)[..12]}";

    /// <summary>The workspace it is in.</summary>
    public Workspace Workspace { get; }

    /// <summary>Its journal and fold.</summary>
    public DossierSession Session { get; }

    /// <summary>Its model.</summary>
    public DossierModel Model { get; }

    /// <summary>The claims as they read now.</summary>
    public IReadOnlyList<Claim> Claims => claims.In(Session.View);

    /// <summary>The claims as questions and moves see them.</summary>
    public IReadOnlyList<TiedClaim> Tied => tied.In(Session.View);

    /// <summary>Sightings that cannot all be true, in the book's order.</summary>
    public IReadOnlyList<Quarrel> Quarrels => quarrels.In(Session.View);

    /// <summary>What to measure next for everything that is asked or told, the best first.</summary>
    public ValueList<NextMove> Moves => moves.In(Session.View);

    /// <summary>The question board with its present answers.</summary>
    public ValueList<BoardQuestion> Questions => questions.In(Session.View);

    /// <summary>Hashes of the pictures that a machine has looked at, also where the look was taken back since: nothing is looked at again in silence.</summary>
    public IReadOnlySet<string> Looked => looked.In(Session.View);

    /// <summary>Whether a picture has a known length and nobody looked at it: a look tells what it is worth.</summary>
    public bool WantsLook(string sha256) => !Looked.Contains(sha256) && Model.Scale(sha256).References.Count > 0;

    /// <summary>Opens a dossier and feeds its model. Several dossiers may share the naming engine; it is made when a name is first asked for.</summary>
    public static Outcome<OpenDossier> Open(Workspace workspace, string name, Lazy<Ranker> ranker) =>
        DossierSession.Open(workspace, name, DossierKinds.All).Then(session =>
        {
            var model = new DossierModel(ranker, "catalogue", sha256 => Frame(workspace, sha256));
            model.Feed(session.Fold);
            return new OpenDossier(workspace, session, model);
        });

    /// <summary>The naming engine over the shipped facts (in <paramref name="facts"/>) and the workspace's imports, made when first asked for.</summary>
    public static Lazy<Ranker> Ranker(string facts, Workspace workspace) => new(() =>
    {
        var opened = PartCatalogue.Open(facts, workspace.CacheFolder, ImportShelf.Of(workspace.Folder).Sources());
        if (!opened.TryValue(out var catalogue)) throw new InvalidDataException(opened.Faults[0].Say);
        using (catalogue) return new Ranker(new NamingCatalogue(catalogue.Parts));
    });

    /// <summary>
    /// What a stored picture says of itself, or why it cannot be opened; read once, since a file never changes under its hash.
    /// </summary>
    public Outcome<PictureHeader> Picture(string sha256, string name)
    {
        if (headers.TryGetValue(sha256, out var known)) return known;
        return headers[sha256] = PictureFile.Read(Workspace.Files.PathOf(sha256), name);
    }

    /// <summary>Takes in what anybody has stored since.</summary>
    public void Refresh()
    {
        Session.Refresh();
        Model.Feed(Session.Fold);
    }

    /// <summary>Stores drafts and takes them in.</summary>
    public Outcome<IReadOnlyList<StoredEntry>> Append(IReadOnlyList<EntryDraft> drafts)
    {
        var stored = Session.Append(drafts);
        Model.Feed(Session.Fold);
        return stored;
    }

    private static PictureFrame? Frame(Workspace workspace, string sha256) =>
        workspace.Files.Has(sha256) && PictureFile.Read(workspace.Files.PathOf(sha256), sha256[..12]) is { Ok: true } header ? header.Value.Frame : null;
}
