using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Tracing.Nets;

/// <summary>
/// Which sightings join points and which hold them apart. Between the two limits lies what passes through a part: it says neither.
/// </summary>
public static class NetEvidence
{
    /// <summary>A reading up to here, Ω, joins: leads and contacts of hand probes make some tenths, a thin track up to one. Common practice, no source.</summary>
    public const double JoinsOhm = 2;

    /// <summary>A beep joins up to this threshold, Ω. Meters differ, 10 to 75 Ω; a threshold far above that also beeps through parts. Common practice, no source.</summary>
    public const double JoinsBeepOhm = 100;

    /// <summary>A reading from here on, Ω, holds apart: no track reads so much. Common practice, no source.</summary>
    public const double ApartOhm = 1000;

    /// <summary>What an open circuit is at least, Ω: hand meters show a megohm and more. Common practice, no source.</summary>
    public const double OpenOhm = 1e6;

    /// <summary>A beeper whose threshold was not noted beeps below this at least, Ω. Common practice, no source.</summary>
    public const double LeastBeepOhm = 10;

    /// <summary>And below this at most, Ω.</summary>
    public const double MostBeepOhm = 75;

    /// <summary>More volts than this beside a resistance void it: the meter measures with less. Common practice, no source.</summary>
    public const double ResidualVolts = 0.02;

    /// <summary>Name of the ground net where pins were counted to ground.</summary>
    public const string Ground = "GND";

    /// <summary>What joins points, in fold order of each kind: touches, counted ground pins, nets drawn by hand.</summary>
    public static IReadOnlyList<NetLink> Joins(IDossierView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var links = new List<NetLink>();
        foreach (var touch in view.Live<TouchSighting>())
        {
            if (touch.Value is { Beep: true } && !(touch.Value.ThresholdOhm > JoinsBeepOhm) && !Voided(touch.Value)) links.Add(Link(touch, NetSentences.Beep(touch.Value), touch.Value.ThresholdOhm ?? MostBeepOhm));
            else if (touch.Value.Ohms is <= JoinsOhm && !Voided(touch.Value)) links.Add(Link(touch, NetSentences.Low(touch.Value), touch.Value.Ohms.Value));
        }

        foreach (var pins in view.Live<PinsSighting>())
        {
            var points = pins.Value.Ground.Select(pin => new TouchPoint(pins.Value.Spot + "." + pin));
            links.AddRange(points.Select(point => new NetLink(point, new TouchPoint(Ground), NetGrade.Touched, pins.Id, NetSentences.Ground(point), 0, pins.Specimen)));
        }

        foreach (var net in view.Newest<NetDrawn>(net => net.Net))
        {
            var hub = net.Value.Points[0];
            links.AddRange(net.Value.Points.Skip(1).Select(point => new NetLink(hub, point, NetGrade.ByHand, net.Id, NetSentences.Drawn(net.Value), 0)));
        }

        return links;
    }

    /// <summary>What holds points apart, in fold order.</summary>
    public static IReadOnlyList<NetLink> Aparts(IDossierView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return [.. view.Live<TouchSighting>().Where(touch => Apart(touch.Value)).Select(touch => Link(touch, NetSentences.Apart(touch.Value), LeastOhm(touch.Value)))];
    }

    private static bool Apart(TouchSighting touch) => touch.Open || (touch.Beep == false && touch.Ohms is null) || (touch.Ohms >= ApartOhm && !Voided(touch));

    /// <summary>True where a voltage between the points voids what was read of their resistance.</summary>
    public static bool Voided(TouchSighting touch) => Guard.NotNull(touch).Volts is { } volts && Math.Abs(volts) > ResidualVolts;

    private static double LeastOhm(TouchSighting touch) => touch switch
    {
        { Open: true } => OpenOhm,
        { Ohms: { } ohms } => ohms,
        _ => touch.ThresholdOhm ?? LeastBeepOhm,
    };

    private static NetLink Link(Sighting<TouchSighting> touch, string say, double ohm) => new(touch.Value.A, touch.Value.B, NetGrade.Touched, touch.Id, say, ohm, touch.Specimen);
}
