using Lidoff.Bench.Working;
using Lidoff.Telling.Dossiers;
using Microsoft.AspNetCore.Components;

namespace Lidoff.Bench.Components;

/// <summary>
/// A page of one dossier: shows one value made of it and follows the store. Whether the dossier is there is the frame's business:
/// a room's page is only drawn for one that is.
/// </summary>
/// <typeparam name="T">What it shows; an equal value redraws nothing.</typeparam>
public abstract class RoomPage<T> : LivePage<T>
    where T : class
{
    /// <summary>The dossier's short name, from the address.</summary>
    [Parameter]
    public string Name { get; set; } = "";

    /// <summary>Notes what is done here, takes it back, says what came of it.</summary>
    [Inject]
    protected Hand Hand { get; private set; } = null!;

    /// <summary>What the drawer explains.</summary>
    [Inject]
    protected Selection Selection { get; private set; } = null!;

    /// <summary>Makes the value; nothing of the dossier may be kept.</summary>
    protected abstract T Look(OpenDossier dossier);

    /// <inheritdoc/>
    protected override T? Load() => Data.View(Name, Look);

    /// <summary>An address in this dossier: <c>To("see", sha256)</c>.</summary>
    protected string To(params IEnumerable<string> parts) => "/dossiers/" + string.Join('/', parts.Prepend(Name).Select(Uri.EscapeDataString));
}
