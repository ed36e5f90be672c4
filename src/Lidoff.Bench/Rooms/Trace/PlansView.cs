using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Drawing.Plans;
using Lidoff.Weighing.Blocks;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>The drawings of the room Trace: the supply and the blocks, where there is something to draw.</summary>
/// <param name="Plans">In reading order.</param>
public sealed record PlansView(ValueList<PlanRow> Plans)
{
    /// <summary>The drawings as the dossier stands.</summary>
    public static PlansView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        // A block is called by the part that sits there once that is known.
        string Part(string spot) => dossier.Model.Value("part:" + spot) is { Missing: null, Name: { } name } ? name : "";
        var supply = SupplyTree.Of(view);
        return new([.. Rows(PlanDrawing.Supply(supply), supply.Remarks, PlanDrawing.Blocks(BlockPlan.Of(view, Part)))]);
    }

    private static IEnumerable<PlanRow> Rows(DrawnPlan? supply, ValueList<string> remarks, DrawnPlan? blocks)
    {
        if (supply is not null) yield return Row("supply", "Supply", supply, remarks);
        if (blocks is not null) yield return Row("blocks", "Blocks", blocks, []);
    }

    private static PlanRow Row(string name, string title, DrawnPlan plan, ValueList<string> remarks) =>
        new(name, title, plan.Drawing.Width, plan.Drawing.Height, plan.Drawing.Body, plan.Alternative, remarks);
}
