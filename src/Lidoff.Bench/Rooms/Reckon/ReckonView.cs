using System.Globalization;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Reckoning.Reckon;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.Reckon;

/// <summary>What the room Reckon shows: bound numbers, then measured lengths, each with its doubt.</summary>
/// <param name="Numbers">Reckonings in natural order, then lengths.</param>
public sealed record ReckonView(ValueList<ReckoningRow> Numbers)
{
    /// <summary>The room as the dossier stands.</summary>
    public static ReckonView Of(OpenDossier dossier) => new([.. Reckonings(dossier), .. Lengths(dossier)]);

    private static IEnumerable<ReckoningRow> Reckonings(OpenDossier dossier) => ReckoningNames.Of(dossier.Session.View).Select(name =>
    {
        var value = dossier.Model.Value("reckoning:" + name);
        return Row(name + ": " + value.Says, value, dossier.Model.Reckoning(name)?.Result);
    });

    private static IEnumerable<ReckoningRow> Lengths(OpenDossier dossier) => dossier.Session.View.Live<LengthSighting>()
        .Select(length => $"length:{length.Value.Spot}:{length.Value.What}").Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)
        .Select(reference => dossier.Model.Value(reference)).Select(value => Row(value.Says, value, null));

    private static ReckoningRow Row(string name, ModelValue value, ReckonResult? counted)
    {
        var maturity = counted is null ? "" : ReckonJson.Word(counted.Info.Maturity);
        if (value.Missing is { } missing) return new(name, "unknown", "", value.Grade, maturity, [], "", [], [missing]);
        var cautions = counted?.Cautions ?? [];
        var shares = (counted?.Value.Shares ?? []).Where(share => share.Share >= 0.01).OrderByDescending(share => share.Share)
            .Select(share => string.Create(CultureInfo.InvariantCulture, $"{share.Input} {share.Share * 100:0} %"));
        return new(name, ReportContext.Print(value), ReportContext.Interval(value), value.Grade, maturity, [.. shares], value.Source, [.. value.Because.Except(cautions)], cautions);
    }
}
