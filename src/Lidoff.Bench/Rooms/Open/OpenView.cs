using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>What the room Open shows.</summary>
/// <param name="Steps">What was done, in order.</param>
public sealed record OpenView(ValueList<StepSighting> Steps)
{
    /// <summary>The room as the dossier stands.</summary>
    public static OpenView Of(OpenDossier dossier) => new([.. dossier.Session.View.Live<StepSighting>().Select(step => step.Value)]);
}
