//! Crown-race seats and steerers.

use framegauge::prep::Operation::Refer;

use super::{CUTS, Case, hold};

#[test]
fn crowns() {
    hold(
        "crowns",
        &[
            Case(
                "race presses within every opinion",
                &[],
                CUTS,
                "30.02 on 29.90: 0.12 mm, within race_0_10_0_20",
                "material = \"steel\"\n[crown]\nbelieved = \"30.0\"\ncoating = \"bare\"\nseat = [\"30.02 mm +/- 0.005 mm\", \"30.02 mm +/- 0.005 mm\"]\nrace = [\"29.90 mm +/- 0.005 mm\"]",
            ),
            Case(
                "race loose on its seat",
                &[Refer],
                &[],
                "29.95 on 30.00: no press is left, race or seat is worn",
                "material = \"steel\"\n[crown]\nbelieved = \"30.0\"\ncoating = \"bare\"\nseat = [\"29.95 mm +/- 0.005 mm\"]\nrace = [\"30.00 mm +/- 0.005 mm\"]",
            ),
            Case(
                "race on a painted seat",
                &[],
                &[],
                "nothing is shown through paint",
                "material = \"steel\"\n[crown]\nbelieved = \"30.0\"\ncoating = \"painted\"\nseat = [\"30.12 mm +/- 0.005 mm\"]\nrace = [\"29.90 mm +/- 0.005 mm\"]",
            ),
            Case(
                "seat alone",
                &[],
                CUTS,
                "the race is asked for",
                "material = \"steel\"\n[crown]\nbelieved = \"30.0\"\ncoating = \"bare\"\nseat = [\"30.02 mm +/- 0.005 mm\"]",
            ),
        ],
    );
}

#[test]
fn steerers() {
    hold(
        "steerers",
        &[
            Case(
                "longer than its stack",
                &[],
                &[],
                "220 mm against 197 mm: cut after the faces; the name has to be one of the tables",
                "material = \"steel\"\n[steerer]\nbelieved = \"1 1/8 in\"\noutside = [\"28.6 mm +/- 0.02 mm\"]\nlength = \"220 mm +/- 0.5 mm\"\nstack = [\"150 mm +/- 0.5 mm\", \"50 mm +/- 0.5 mm\"]",
            ),
            Case(
                "shorter than its stack",
                &[],
                &[],
                "190 mm against 197 mm: fewer spacers, never less grip",
                "material = \"steel\"\n[steerer]\noutside = [\"28.6 mm +/- 0.02 mm\"]\nlength = \"190 mm +/- 0.5 mm\"\nstack = [\"150 mm +/- 0.5 mm\", \"50 mm +/- 0.5 mm\"]",
            ),
            Case(
                "as long as its stack",
                &[],
                &[],
                "197 +/- 0.5 mm: 200 mm of stack less 3 mm below the top, as far as the readings tell",
                "material = \"steel\"\n[steerer]\noutside = [\"28.6 mm +/- 0.02 mm\"]\nlength = \"197 mm +/- 0.5 mm\"\nstack = [\"150 mm +/- 0.5 mm\", \"50 mm +/- 0.5 mm\"]",
            ),
            Case(
                "threaded, 24 to the inch",
                &[],
                &[],
                "Italian and English steerers share size and pitch and differ in form",
                "material = \"steel\"\n[steerer]\noutside = [\"25.3 mm +/- 0.02 mm\"]\npitch = \"24 tpi\"",
            ),
        ],
    );
}
