namespace Lidoff.Bench.Components.Layout;

/// <summary>Where in a dossier an address leads: its short name, and the room's; empty where there is none.</summary>
internal sealed record DossierAddress(string Dossier, string Room)
{
    /// <summary>Of an address from the site's root, without a leading slash: "dossiers/brindle/see/…".</summary>
    public static DossierAddress Of(string relative)
    {
        var parts = relative.Split('?', '#')[0].Split('/');
        return parts is ["dossiers", var dossier, ..] ? new(Uri.UnescapeDataString(dossier), parts.Length > 2 ? parts[2] : "") : new("", "");
    }
}
