//! Axles, hangers, bosses.

use framegauge::prep::Operation::{Chase, Refer, Tap};

use super::{CUTS, Case, hold};

#[test]
fn places() {
    hold(
        "threads",
        &[
            Case(
                "boss not cut yet, hole too large",
                &[Refer],
                &[Tap],
                "4.60 is over 4.334 (M5x0.8, 6H, ISO 965-1): too little thread would be left",
                "material = \"steel\"\n[[thread]]\nplace = \"bottle_boss\"\nbelieved = \"M5x0.8\"\nstate = \"uncut\"\nminor = [\"4.60 mm +/- 0.02 mm\"]",
            ),
            Case(
                "boss not cut yet, hole right",
                &[Tap],
                &[],
                "4.20 lies within 4.134 to 4.334",
                "material = \"steel\"\n[[thread]]\nplace = \"bottle_boss\"\nbelieved = \"M5x0.8\"\nstate = \"uncut\"\nminor = [\"4.20 mm +/- 0.02 mm\"]",
            ),
            Case(
                "boss not cut yet, hole too small",
                &[],
                &[],
                "4.00 is under 4.134: enlarge it first",
                "material = \"steel\"\n[[thread]]\nplace = \"bottle_boss\"\nbelieved = \"M5x0.8\"\nstate = \"uncut\"\nminor = [\"4.00 mm +/- 0.02 mm\"]",
            ),
            Case(
                "boss not cut yet, hole not measured",
                &[],
                &[],
                "the hole decides how much thread there will be",
                "material = \"steel\"\n[[thread]]\nplace = \"bottle_boss\"\nbelieved = \"M5x0.8\"\nstate = \"uncut\"",
            ),
            Case(
                "torn-out boss",
                &[Refer],
                CUTS,
                "a chaser restores no metal",
                "material = \"steel\"\n[[thread]]\nplace = \"bottle_boss\"\nbelieved = \"M5x0.8\"\npitch = \"0.8 mm\"\nstate = \"stripped\"",
            ),
            Case(
                "hanger, nothing believed",
                &[],
                &[],
                "the only listed thread of this place",
                "material = \"aluminium\"\n[[thread]]\nplace = \"hanger\"\nend = \"rear\"\npitch = \"1 mm\"\nstate = \"fouled\"\ncoating = \"painted\"",
            ),
            Case(
                "hanger, gauge against the sheet",
                &[],
                &[],
                "the pitch gauge says 1.5 mm where M10x1 is believed: the gauge is believed",
                "material = \"aluminium\"\n[[thread]]\nplace = \"hanger\"\nend = \"rear\"\nbelieved = \"M10x1\"\npitch = \"1.5 mm\"\nstate = \"fouled\"\ncoating = \"painted\"",
            ),
            Case(
                "axle, crossed",
                &[Chase],
                &[],
                "clean first; no verdict before the gauge",
                "material = \"steel\"\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\nmate = \"M12x1\"\npitch = \"1 mm\"\nstate = \"crossed\"\ncoating = \"bare\"",
            ),
            Case(
                "axle in carbon, fouled",
                &[],
                &[],
                "a thread bonded into laminate is cleaned, not cut",
                "material = \"carbon\"\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\nmate = \"M12x1\"\npitch = \"1 mm\"\nstate = \"fouled\"\ncoating = \"painted\"",
            ),
            Case(
                "axle, sound and gauged",
                &[],
                CUTS,
                "GO passed, NOT GO stopped: nothing to do",
                "material = \"steel\"\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\nmate = \"M12x1\"\npitch = \"1 mm\"\nstate = \"sound\"\ngo = \"passed\"\nnot_go = \"passed\"\ncoating = \"bare\"",
            ),
        ],
    );
}
