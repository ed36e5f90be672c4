namespace Lidoff.Demo;

/// <summary>What the Reckon and Tell rooms hold of the demo: numbers bound to sightings, claims, and the questions they answer.</summary>
internal static class DemoTellLines
{
    public static IReadOnlyList<string> All { get; } =
    [
        """{"kind":"reckon","reckoning":"R1","calculation":"capacity_from_energy","inputs":{"energy":"0.67 Wh ± 0.02","voltage":"3.7"},"says":"What is the cell's capacity?"}""",
        // Between barks it idles at 6.1 µA and sends 5.2 mA for 6 ms each second; a bark is 3.4 mA for 0.12 s on top.
        """{"kind":"reckon","reckoning":"R2","calculation":"runtime","inputs":{"capacity":{"from":"R1"},"sleep_current":"37.3 µA ± 1.3","event_charge":"407 µC ± 18","event_rate":"60..240","reserve":"5..15"},"says":"How long does it run between charges?"}""",
        """{"kind":"reckon","reckoning":"R3","calculation":"energy_density","inputs":{"energy":"0.67 Wh ± 0.02","length":"20.1 mm ± 0.1","width":"14.9 mm ± 0.1","thickness":"4.0 mm ± 0.1"},"says":"Is the print on the cell believable?"}""",
        """{"kind":"reckon","reckoning":"R4","calculation":"i2c_pullup_most","inputs":{"rise_time":"300","capacitance":"40..80 pF"},"says":"How large may the clock's pull-ups be?"}""",
        """{"kind":"reckon","reckoning":"R5","calculation":"pitch_from_cable","inputs":{"width":{"from":"length:J1:length"},"ways":"14"},"says":"How far apart are the flat cable's ways?"}""",
        """{"kind":"reckon","reckoning":"R6","calculation":"trace_resistance","inputs":{"length":{"from":"length:W1:way"},"width":"0.7 mm ± 0.05","thickness":"35 µm ± 3"},"says":"What resistance has one way of the flat cable?"}""",
        """{"kind":"reckon","reckoning":"R7","calculation":"charge_time","inputs":{"capacity":{"from":"R1"},"current":"90 mA ± 2"},"says":"How long does a charge take?"}""",
        """{"kind":"reckon","reckoning":"R8","calculation":"i2c_rise_time","inputs":{"pullup":"4700 Ω ± 25","capacitance":"40..80 pF"},"says":"How fast do the clock's lines rise?"}""",
        """{"kind":"reckon","reckoning":"R9","calculation":"quarter_wave","inputs":{"frequency":"2440 MHz"},"says":"How much longer would a plain wire antenna be?"}""",
        """{"kind":"claim","claim":"C1","text":"The radio at U1 is {part:U1}, read from a mark with one unread character, from its size and from its 48 pins."}""",
        """{"kind":"claim","claim":"C2","text":"The lamp driver at U4 is {part:U4}; it measures {length:U4:length} by {length:U4:width}."}""",
        """{"kind":"claim","claim":"C3","text":"The flat-cable connector is {length:J1:length} long."}""",
        """{"kind":"claim","claim":"C4","text":"The cell holds {reckoning:R1}, and a charge lasts {reckoning:R2}."}""",
        """{"kind":"claim","claim":"C5","text":"A clock chip of its own was chosen so that the radio can sleep: it is {part:U3}.","why":true}""",
        """{"kind":"claim","claim":"C6","text":"The buzzer weighs {mass:BZ1}."}""",
        """{"kind":"claim","claim":"C7","text":"The ways of the flat cable stand {reckoning:R5} apart, and one of them has {reckoning:R6}."}""",
        """{"kind":"claim","claim":"C8","text":"Barks are kept in U2, {part:U2}, which says so itself in its identity register."}""",
        """{"kind":"claim","claim":"C9","text":"Specimen A wakes by {part:U7}; specimen B has another part at the same place."}""",
        """{"kind":"question","question":"Q1","text":"How long does it run between charges?","ties":["reckoning:R2"],"order":1,"from":"reader"}""",
        """{"kind":"question","question":"Q2","text":"Which radio is in it?","ties":["part:U1"],"order":2,"from":"reader"}""",
        """{"kind":"question","question":"Q3","text":"Who makes the lamp driver?","ties":["part:U4"],"order":3,"why":"without it the lamp cannot be rebuilt"}""",
        """{"kind":"question","question":"Q4","text":"How long does a charge take?","ties":["reckoning:R7"],"order":4,"from":"reader"}""",
        """{"kind":"question","question":"Q5","text":"Which flat cable would fit?","ties":["reckoning:R5","length:J1:length"],"order":5}""",
        """{"kind":"question","question":"Q6","text":"Why do two specimens have different accelerometers?","order":6}""",
    ];
}
