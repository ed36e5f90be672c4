using Lidoff.Bench.Components.Parts.Reading;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;
using Lidoff.Naming.Kinds;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed.Codes;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Opening.Kinds;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.Name.Spots;

/// <summary>One spot with everything that speaks for and against who may sit there.</summary>
/// <param name="Spot">Its designator.</param>
/// <param name="Role">What it is there for; may be empty.</param>
/// <param name="Crop">Where it is seen; null where nobody pointed at it.</param>
/// <param name="Settled">How far it is settled.</param>
/// <param name="Says">The verdict in words.</param>
/// <param name="P">Its probability.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="Marks">Its mark on each specimen.</param>
/// <param name="Measured">Lengths, body, pitch.</param>
/// <param name="Candidates">The likeliest first.</param>
/// <param name="Unlisted">Members of an accepted family that no list holds, by family, with their probability.</param>
/// <param name="OthersP">Probability of all listed parts not among them.</param>
/// <param name="NoneP">Probability that no list holds it.</param>
/// <param name="Columns">Parts whose decibans are set side by side: the best two and the best removed rival.</param>
/// <param name="Removed">True when the last of <paramref name="Columns"/> is a removed rival.</param>
/// <param name="Because">One row a sighting.</param>
/// <param name="Rivals">What was removed, and by what.</param>
/// <param name="Decisions">What a person settled, newest last.</param>
/// <param name="Specimen">The specimen whose sightings name it; empty where none was named.</param>
/// <param name="Specimens">Every specimen of the dossier.</param>
/// <param name="Apart">Specimens whose marks are known here and that are not said to be alike; fewer than two where there is nothing to say.</param>
/// <param name="Remarks">Sentences about the evidence as a whole.</param>
/// <param name="Previous">The spot before it; empty for the first.</param>
/// <param name="Next">The spot after it; empty for the last.</param>
/// <param name="Readings">What the machine read of its mark.</param>
public sealed record SpotView(
    string Spot, string Role, SpotCrop? Crop, Settled Settled, string Says, double P, Grade Grade, ValueList<VariantRow> Marks, ValueList<MeasuredRow> Measured,
    ValueList<CandidateRow> Candidates, ValueList<CandidateRow> Unlisted, double OthersP, double NoneP, ValueList<string> Columns, bool Removed, ValueList<BecauseRow> Because, ValueList<RivalRow> Rivals,
    ValueList<DecisionRow> Decisions, string Specimen, ValueList<string> Specimens, ValueList<string> Apart, ValueList<string> Remarks, string Previous, string Next, ValueList<ReadingRow> Readings)
{
    /// <summary>Why its mark could not be read by the machine, where nothing has changed since.</summary>
    public ValueList<string> Unread { get; init; } = [];

    // Below this a part counts as removed: twenty decibans under even odds. A judgement, no source.
    private const double RemovedBelow = 0.01;

    // A removed rival is only named with what removed it when something spoke against it by odds of two to one.
    private const double RemovesFromDb = -3;

    private const int MostShown = 6;

    /// <summary>The spot as the dossier stands.</summary>
    public static SpotView Of(OpenDossier dossier, string spot)
    {
        var view = dossier.Session.View;
        var names = SpotNames.Of(view);
        var at = names.ToList().IndexOf(spot);
        var pointed = view.Live<SpotSighting>().Select(each => each.Value).Where(each => each.Spot == spot).ToList();
        var answer = dossier.Model.Identity(spot);
        var ranked = answer.Asked ? Ranked(answer) : [];
        var rivals = ranked.Where(each => each.P < RemovedBelow).Select(each => Rival(each.Candidate, each.P)).OfType<RivalRow>().ToList();
        var columns = ranked.Where(each => each.P >= RemovedBelow).Take(2).Select(each => each.Candidate).ToList();
        var removed = rivals.Count > 0 ? ranked.First(each => each.Candidate.Part.Name == rivals[0].Part && each.P < RemovedBelow).Candidate : null;
        // Where the lists hold nothing likely, the likeliest of them still shows why.
        if (columns.Count == 0 && ranked.Count > 0) (columns, removed) = ([ranked[0].Candidate], null);
        if (removed is not null) columns.Add(removed);
        return new(
            spot,
            pointed.Select(each => each.Role).LastOrDefault(role => role.Length > 0) ?? "",
            SpotCrop.Of(dossier, pointed),
            NameView.SettledOf(answer),
            answer.Asked ? answer.Says : "",
            answer.P,
            answer.Grade,
            Variants(view, spot),
            [.. Measurements(dossier, spot)],
            [.. ranked.Take(MostShown).Select(each => new CandidateRow(each.Candidate.Part.Name, each.Candidate.Part.Maker, each.Candidate.Part.Class, each.P))],
            [.. ranked.Count > 0 ? Enumerable.Range(ranked.Count, answer.Joint.P.Count - 2 - ranked.Count).Select(i => new CandidateRow(answer.Joint.States[i], "", "", answer.Joint.P[i])) : []],
            ranked.Count > 0 ? answer.Joint.P[^2] + ranked.Skip(MostShown).Sum(each => each.P) : 0,
            ranked.Count > 0 ? answer.Joint.P[^1] : 0,
            [.. columns.Select(each => each.Part.Name)],
            removed is not null,
            [.. Table(answer, columns)],
            [.. rivals.Take(MostShown)],
            [.. view.Live<SpecimensAlike>().Where(each => each.Value.Spot == spot).Select(each => new DecisionRow(each.Id, NameSentences.Alike(spot, each.Value.Specimens), each.Value.Why)),
             .. view.Live<IdentityDecision>().Where(each => each.Value.Spot == spot).Select(each => new DecisionRow(each.Id, NameSentences.Decided(spot, each.Value.Verdict, each.Value.Part), each.Value.Why))],
            answer.Evidence.Specimen,
            AllSpecimens(view),
            [.. answer.Evidence.Specimen.Length > 0 && Others(view, spot, answer) is { Count: > 0 } apart ? apart.Prepend(answer.Evidence.Specimen) : []],
            [.. answer.Evidence.Elsewhere.Select(other => WeighingSentences.Elsewhere(spot, answer.Evidence.Specimen, other)), .. answer.Local.Remarks],
            at > 0 ? names[at - 1] : "",
            at >= 0 && at + 1 < names.Count ? names[at + 1] : "",
            ReadingRow.Of(dossier, spot))
        {
            Unread = StoredUnread.Says(dossier, spot),
        };
    }

    private static List<(Candidate Candidate, double P)> Ranked(IdentityAnswer answer) =>
        [.. answer.Local.Candidates.Select((candidate, i) => (candidate, P: answer.Joint.P[i])).OrderByDescending(each => each.P)];

    private static RivalRow? Rival(Candidate candidate, double p) =>
        candidate.Because.OrderBy(because => because.Db).FirstOrDefault() is { } worst && worst.Db <= RemovesFromDb
            ? new(candidate.Part.Name, p, worst.Evidence, worst.Db, worst.Say)
            : null;

    private static IEnumerable<BecauseRow> Table(IdentityAnswer answer, List<Candidate> columns)
    {
        foreach (var evidence in columns.SelectMany(candidate => candidate.Because).Select(because => because.Evidence).Distinct(StringComparer.Ordinal))
        {
            var told = answer.Evidence.Told.FirstOrDefault(each => each.Evidence.Replace(' ', '_') == evidence.Replace(' ', '_'));
            var said = columns.Select(candidate => candidate.Because.FirstOrDefault(because => because.Evidence == evidence)).ToList();
            yield return new(evidence, told?.Says ?? "", said.OfType<Because>().First().Say, [.. said.Select(because => because?.Db)], told?.From ?? []);
        }
    }

    private static ValueList<string> AllSpecimens(IDossierView view) =>
        [.. view.Live<SpecimenSighting>().Select(each => each.Value.Specimen).Concat(view.Live<MarkSighting>().Select(each => each.Specimen)).Where(each => each.Length > 0).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)];

    // Those that do not count, whether their marks read the same or not.
    private static List<string> Others(IDossierView view, string spot, IdentityAnswer answer)
    {
        var alike = SpotSpecimens.Of([answer.Evidence.Specimen], [.. view.Live<SpecimensAlike>().Where(each => each.Value.Spot == spot)]);
        return [.. view.Live<MarkSighting>().Where(each => each.Value.Spot == spot && !alike.Counts(each.Specimen)).Select(each => each.Specimen).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)];
    }

    private static ValueList<VariantRow> Variants(IDossierView view, string spot)
    {
        // The newest reading of each specimen; which of them counts for the belief, the model says.
        var newest = view.Live<MarkSighting>().Where(each => each.Value.Spot == spot).GroupBy(each => each.Specimen, StringComparer.Ordinal)
            .OrderBy(group => group.Key, NaturalOrder.Instance).Select(group => group.Last()).ToList();
        return [.. newest.Select(mark => new VariantRow(mark.Specimen, mark.Id, mark.Value.Lines, newest.Any(other => other.Value.Written != mark.Value.Written)))];
    }

    private static IEnumerable<MeasuredRow> Measurements(OpenDossier dossier, string spot)
    {
        var view = dossier.Session.View;
        var references = view.Live<LengthSighting>().Where(each => each.Value.Spot == spot).Select(each => $"length:{spot}:{each.Value.What}").Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance).ToList();
        if (view.Live<BodySighting>().Any(each => each.Value.Spot == spot)) references.AddRange([$"body:{spot}:length", $"body:{spot}:width", $"body:{spot}:height"]);
        if (view.Live<PitchSighting>().Any(each => each.Value.Spot == spot)) references.Add("pitch:" + spot);
        foreach (var value in references.Select(dossier.Model.Value).Where(value => value.Missing is null || value.Reference.StartsWith("length:", StringComparison.Ordinal)))
        {
            yield return new(value.Says, value.Reference, value.Missing ?? ReportContext.Print(value), value.Missing is null ? ReportContext.Interval(value) : "", value.Grade);
        }

        foreach (var told in dossier.Model.Identity(spot).Evidence.Told.Where(told => told.Evidence is "pins" or "ground pins" or "bus" or "identity" or "supply"))
        {
            yield return new(told.Evidence, "", told.Says, "", Grade.E2);
        }

        foreach (var (code, reading, p) in Values(view, spot)) yield return new(NameSentences.ValueCode(code), "", reading.ToString(), ValueText.Percent(p), Grade.E1);
    }

    // What is taken for a passive carries a value, not a number. Every reading of it, but for those that its sort rules out.
    private static IEnumerable<(string Code, CodeReading Reading, double P)> Values(IDossierView view, string spot)
    {
        var kind = view.Live<SpotSighting>().Where(each => each.Value.Spot == spot).Select(each => each.Value.Class).LastOrDefault(each => each.Length > 0) ?? "";
        if (ClassGroups.Of(kind) != ClassGroups.Passive) return [];
        PassiveSort? sort = Enum.TryParse<PassiveSort>(kind, ignoreCase: true, out var told) ? told : null;
        var typed = view.Live<MarkSighting>().Where(each => each.Value.Spot == spot).Select(each => each.Value.Text).Distinct(StringComparer.Ordinal).ToList();
        // What a machine read counts where no person did, with what else it may be.
        var read = typed.Count > 0 ? [] : view.Live<ReadingSighting>().Where(each => each.Value.Spot == spot && each.Value.Lines.Count == 1).Select(each => each.Value.Lines[0].Readings).LastOrDefault() ?? [];
        var bands = typed.Count > 0 ? null : view.Live<ReadingSighting>().Where(each => each.Value.Spot == spot && each.Value.Bands.Count > 0).Select(each => each.Value).LastOrDefault();
        return typed.SelectMany(text => Typed(text, sort)).Concat(bands?.BandOdds(sort)?.Readings.Select(each => (string.Join(' ', each.Colours.Select(TypedBands.Name)), each.Reading, each.P)) ?? []).Concat(Weighed(CodeOdds.OfRead(read.Select(each => (each.Text, each.P)), sort), null)).Where(each => each.P >= WorthARow);
    }

    private static IEnumerable<(string Code, CodeReading Reading, double P)> Typed(string text, PassiveSort? sort) =>
        TypedBands.Looks(text) && TypedBands.Read(text).TryValue(out var bands)
            ? BandOdds.Of(bands, BandOdds.BegunAtTheFirst, sort).Readings.Select(each => (text, each.Reading, each.P))
            : Weighed(CodeOdds.Of(text, sort), text);

    private static IEnumerable<(string Code, CodeReading Reading, double P)> Weighed(CodeOdds odds, string? typed) => odds.Readings.Select(each => (typed ?? each.As, each.Reading, each.P));

    // A reading less likely than this is not worth a row. A choice of ours.
    private const double WorthARow = 0.001;
}
