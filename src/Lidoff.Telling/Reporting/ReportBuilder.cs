using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Registering;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Writing;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Telling.Reporting;

/// <summary>Builds the report of a dossier: its claims read live, then every section in its place.</summary>
public static class ReportBuilder
{
    private static readonly Lazy<IReadOnlyList<IReportSection>> Sections = new(() =>
        [.. Registry.Of<IReportSection>(typeof(IReportSection).Assembly).Items.OrderBy(section => section.Place)]);

    /// <summary>The claims as they read today. <paramref name="program"/> is this program's version.</summary>
    public static IReadOnlyList<Claim> Claims(IDossierView view, DossierModel model, string program) =>
        ClaimBook.Read(view.Live<ClaimWritten>(), view.Live<ClaimsPublished>(), reference => Valued(model.Value(reference)), program, Erased(view));

    /// <summary>The whole report.</summary>
    public static Document Build(IDossierView view, DossierModel model, IReadOnlyList<ReportPicture> pictures, string program)
    {
        var context = new ReportContext(view, model, Claims(view, model, program), pictures);
        var opened = view.Live<DossierOpened>().Select(sighting => sighting.Value).ToList();
        var title = opened.Select(dossier => dossier.Title).LastOrDefault(text => text.Length > 0) ?? view.Dossier;
        var notice = opened.Select(dossier => dossier.Notice).LastOrDefault(text => text.Length > 0) ?? "";
        return new(title, notice, [.. Lidoff.Telling.Sections.GradeLegend.Into([.. Sections.Value.Select(section => (section, section.Build(context))).Where(each => each.Item2 is not null).Select(each => (each.section, each.Item2!))])]);
    }

    private static HashSet<string> Erased(IDossierView view) =>
        [.. view.Entries.Where(entry => entry.Fate == EntryFate.Erased).Select(entry => entry.Entry.Id.Hex)];

    private static ClaimValue Valued(ModelValue value)
    {
        var unit = value.Unit;
        return value.Number is { } number && value.Missing is null
            ? new(value.Reference, unit.FromSi(number.Value), unit.SpanFromSi(number.U), unit.FromSi(value.Low), unit.FromSi(value.High), unit.Symbol, null, ReportContext.Print(value), value.Grade, value.RestsOn)
            : new(value.Reference, null, null, null, null, "", value.Name, ReportContext.Print(value), value.Grade, value.RestsOn);
    }
}
