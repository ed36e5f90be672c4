using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Reporting;

namespace Lidoff.Telling.Sections;

/// <summary>The entries that the report leans on: what, by whom, when, and the raw file with its hash.</summary>
public sealed class EntriesSection : IReportSection
{
    /// <inheritdoc/>
    public string Name => "entries";

    /// <inheritdoc/>
    public int Place => 90;

    /// <inheritdoc/>
    public Section? Build(ReportContext context)
    {
        // In fold order: what came later stands later, whatever the ids happen to be.
        var cited = context.Cited.ToHashSet();
        var entries = context.View.Entries.Where(folded => cited.Contains(folded.Entry.Id)).ToList();
        return entries.Count == 0 ? null : new("entries", "The entries", [.. entries.Select(folded => Of(folded, context))]);
    }

    private static Anchored Of(FoldedEntry folded, ReportContext context)
    {
        var entry = folded.Entry;
        List<Inline> inlines =
        [
            new TextRun(string.Create(CultureInfo.InvariantCulture, $"Noted {entry.At:yyyy-MM-dd HH:mm} UTC{(entry.By.Length > 0 ? " by " + entry.By : "")}; ")),
            new TextRun(Says(entry.Id, context)),
            new TextRun(folded.Fate == EntryFate.Live ? " Entry " : $" This entry is {folded.Fate.ToString().ToLowerInvariant()}. Entry "),
            new MarkRun(entry.Id.Hex),
            new TextRun("."),
        ];
        if (Picture(entry.Id, context) is { } picture)
        {
            inlines.Add(new TextRun(" See "));
            inlines.Add(new LinkRun("the picture", PicturesSection.Anchor(picture.Sha256), LinkKind.Anchor));
            inlines.Add(new TextRun(" and "));
            inlines.Add(new LinkRun("its file", picture.File, LinkKind.File));
            inlines.Add(new TextRun(", SHA-256 of the original "));
            inlines.Add(new MarkRun(picture.Sha256));
            inlines.Add(new TextRun("."));
        }

        return new(ReportContext.Anchor(entry.Id), entry.Kind, [new Paragraph(inlines)]);
    }

    private static string Says(EntryId id, ReportContext context) =>
        Find<FileAdded>(id, context) is { } file ? string.Create(CultureInfo.InvariantCulture, $"file {file.Name}, {file.Bytes} bytes.")
        : Find<ScaleSighting>(id, context) is { } scale ? string.Create(CultureInfo.InvariantCulture, $"a known length of {scale.Reference.LengthMm:0.###} ± {scale.Reference.UMm:0.###} mm in {scale.Picture}, from {Point(scale.Reference.From)} to {Point(scale.Reference.To)} px.")
        : Find<LengthSighting>(id, context) is { InPicture: { } clicked } length ? $"{length.What} of {length.Spot} clicked in {clicked.Picture}, from {Point(clicked.From)} to {Point(clicked.To)} px."
        : Find<LengthSighting>(id, context) is { ByInstrument: { } read } by ? string.Create(CultureInfo.InvariantCulture, $"{by.What} of {by.Spot}: {read.Mm:0.###} ± {read.UMm:0.###} mm with {(read.Instrument.Length > 0 ? read.Instrument : "an instrument")}.")
        : Find<MarkSighting>(id, context) is { } mark ? $"mark on {mark.Spot}: {mark.Text}."
        : Find<BodySighting>(id, context) is { } body ? string.Create(CultureInfo.InvariantCulture, $"body of {body.Spot}: {body.FirstMm:0.###} × {body.SecondMm:0.###} mm, each ± {body.UMm:0.###}.")
        : Find<SpotSighting>(id, context) is { } spot ? $"spot {spot.Spot}{(spot.Role.Length > 0 ? ": " + spot.Role : "")}."
        : Find<Claims.ClaimWritten>(id, context) is { } claim ? $"claim {claim.Name}: {claim.Text}"
        : Find<Reckoning.Bound.ReckonBinding>(id, context) is { } reckoning ? $"reckoning {reckoning.Reckoning}: {reckoning.Calculation} of {string.Join(", ", reckoning.Inputs.Select(input => $"{input.Key} {(input.From.Length > 0 ? input.From : input.Typed)}"))}."
        : Find<Naming.Kinds.IdentityDecision>(id, context) is { } decision ? $"decision on {decision.Spot}: {Says(decision.Verdict)}{(decision.Part.Length > 0 ? " " + decision.Part : "")}, because {decision.Why}."
        : Find<Tracing.Kinds.PinsSighting>(id, context) is { } pins ? $"pins of {pins.Spot}: {pins.Count?.ToString(CultureInfo.InvariantCulture) ?? "not counted"}{(pins.Ground.Count > 0 ? ", on ground " + string.Join(", ", pins.Ground) : "")}."
        : Find<Tracing.Kinds.BusSighting>(id, context) is { } bus ? string.Create(CultureInfo.InvariantCulture, $"{bus.Spot} answered on a bus{(bus.Address is { } address ? $" at 0x{address:x2}" : "")}.")
        : Find<Tracing.Kinds.IdentitySighting>(id, context) is { } identity ? string.Create(CultureInfo.InvariantCulture, $"{(identity.Spot.Length > 0 ? identity.Spot : "a part")} returned 0x{identity.Value:x2} from register 0x{identity.Register:x2}.")
        : Find<Tracing.Kinds.SupplySighting>(id, context) is { } supply ? string.Create(CultureInfo.InvariantCulture, $"supply of {supply.Spot}: {supply.V:0.###} ± {supply.UV:0.###} V.")
        : Find<Opening.Kinds.MassSighting>(id, context) is { } mass ? string.Create(CultureInfo.InvariantCulture, $"mass of {(mass.Spot.Length > 0 ? mass.Spot : "the whole")}: {mass.G:0.###} ± {mass.UG:0.###} g.")
        : "as written.";

    private static string Says(Naming.Kinds.Verdict verdict) => verdict switch
    {
        Naming.Kinds.Verdict.Accept => "accepted as",
        Naming.Kinds.Verdict.Reject => "rejected",
        _ => "not in any list",
    };

    private static ReportPicture? Picture(EntryId id, ReportContext context)
    {
        var name = Find<FileAdded>(id, context)?.Sha256 ?? Find<ScaleSighting>(id, context)?.Picture ?? Find<LengthSighting>(id, context)?.InPicture?.Picture ?? Find<SpotSighting>(id, context)?.Picture;
        if (string.IsNullOrEmpty(name) || context.Model.Picture(name) is not { Found: true } answer) return null;
        return context.Pictures.FirstOrDefault(picture => picture.Sha256 == answer.Sha256);
    }

    private static T? Find<T>(EntryId id, ReportContext context)
        where T : class => context.View.Live<T>().FirstOrDefault(sighting => sighting.Id == id)?.Value;

    private static string Point(Evidence.Pictures.PicturePoint point) => string.Create(CultureInfo.InvariantCulture, $"({point.X:0.#}, {point.Y:0.#})");
}
