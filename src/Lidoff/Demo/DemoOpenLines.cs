namespace Lidoff.Demo;

/// <summary>What the Open room holds of the demo: specimens, behaviour before opening, steps, cell, masses, plans, the last pause.</summary>
internal static class DemoOpenLines
{
    public static IReadOnlyList<string> All { get; } =
    [
        """{"kind":"specimen","specimen":"A","says":"bought used, collar strap missing, lights up when shaken","may_destroy":true,"mass_g":21.4,"u_g":0.05}""",
        """{"kind":"specimen","specimen":"B","says":"new in its box, opened without cutting, closed again","revision":"box says OW-3 second run","may_destroy":false,"mass_g":21.6,"u_g":0.05}""",
        """{"kind":"state","specimen":"A","name":"off","says":"after ten seconds on the button; wakes on the dock","lights":"none","buttons":"ten seconds","current_ua":0.4,"u_ua":0.2}""",
        """{"kind":"state","specimen":"A","name":"idle","says":"nothing lit, between two beacons","lights":"none","current_ua":6.1,"u_ua":0.4}""",
        """{"kind":"state","specimen":"A","name":"beacon","says":"the radio speaks once a second","lights":"none","lasts_s":0.006,"current_ua":5200,"u_ua":200}""",
        """{"kind":"state","specimen":"A","name":"bark","says":"the count goes up by one","lights":"none","lasts_s":0.12,"current_ua":3400,"u_ua":150}""",
        """{"kind":"state","specimen":"A","name":"night lamp","lights":"amber, dim","buttons":"two short presses","current_ua":2400,"u_ua":60}""",
        """{"kind":"state","specimen":"A","name":"charging","lights":"amber, steady; goes out when full","buttons":"none work","current_ua":-90000,"u_ua":2000,"lasts_s":8400}""",
        """{"kind":"step","specimen":"A","does":"Photographed all sides, whole, with a ruler","act":"look","tool":"stand, flat light","minutes":10,"picture":"brindle-closed-top.png"}""",
        """{"kind":"step","specimen":"A","does":"Charged once on the dock and logged the current","act":"charge","tool":"dock, meter in the lead","minutes":150,"picture":"brindle-charging.png"}""",
        """{"kind":"step","specimen":"A","does":"Cut the seam on the lamp side, away from the cell","act":"cut","tool":"ceramic blade","setting":"1.2 mm deep","minutes":12,"destroys":"the seal and what it could have told about water","picture":"brindle-seam.png"}""",
        """{"kind":"step","specimen":"A","does":"Pried the lid off along the cut","act":"pry","tool":"plastic card","minutes":5,"picture":"brindle-opened.png"}""",
        """{"kind":"step","specimen":"A","does":"Unsoldered and taped the cell's leads, one at a time","act":"cell","tool":"plastic spudger, insulating tape","minutes":4,"destroys":"the clock's time","picture":"brindle-cell-out.png"}""",
        """{"kind":"step","specimen":"A","does":"Lifted the glue bead and unplugged the flat cable","act":"pry","tool":"plastic spudger","minutes":6,"destroys":"the glue bead","picture":"brindle-cable-unplugged.png"}""",
        """{"kind":"step","specimen":"A","does":"Fed the main board from a bench supply; every state still comes up","act":"supply","tool":"bench supply","setting":"3.8 V, 50 mA limit","minutes":9}""",
        """{"kind":"step","specimen":"A","does":"Probed pads of radio and memory against ground","act":"probe","tool":"meter, needle tips","minutes":15,"picture":"brindle-main-top.png"}""",
        """{"kind":"step","specimen":"B","does":"Opened the lid without cutting and photographed both sides of the board","act":"pry","tool":"plastic card, warmed in the hand","minutes":20,"picture":"brindle-b-main-top.png"}""",
        """{"kind":"cell","specimen":"A","spot":"B1","volts":3.94,"u_v":0.01,"connected":true,"wires":2}""",
        """{"kind":"cell","specimen":"A","spot":"B1","volts":3.87,"u_v":0.01,"ohms":0.42,"printed":"0.67 Wh","mm":[20.1,14.9,4.0],"wires":2,"connected":false}""",
        """{"kind":"mass","specimen":"A","spot":"B1","g":3.61,"u_g":0.01}""",
        """{"kind":"mass","specimen":"A","spot":"A1","g":3.42,"u_g":0.01}""",
        """{"kind":"mass","specimen":"A","spot":"A2","g":1.18,"u_g":0.01}""",
        """{"kind":"mass","specimen":"A","spot":"W1","g":0.57,"u_g":0.01}""",
        """{"kind":"mass","specimen":"A","spot":"DS1","g":1.02,"u_g":0.01}""",
        """{"kind":"mass","specimen":"A","spot":"CASE","g":11.5,"u_g":0.02}""",
        """{"kind":"plan","plan":"P1","does":"Cut the moulded lump off the small board to see the cable's joint","act":"cut","destroys":"the joint and the strain relief as they were made","record_first":["mass:A2","a close-up from both sides"],"recorded":["mass:A2"],"why":"how the cable is held is the last open question of the mechanics"}""",
        """{"kind":"plan","plan":"P2","does":"Lift the lamp driver with hot air","act":"heat","destroys":"the chip and its solder joints","record_first":["ohms from each pin to ground","a picture under low light"],"recorded":["a picture under low light"],"after":["P1"],"why":"its underside may carry a maker's code"}""",
        """{"kind":"pause","specimen":"A","in_hand":"main board of A in the vice, lower side up, needle on TP3","next":"touch TP3 and TP4 against the programming pads, then decide on P1","checked":["heat-off","supply-off","cell-disconnected","cell-safe","specimens-labelled","in-hand-noted"]}""",
    ];
}
