//! Bottom-bracket shells: hands, widths, press bores, faces.

use framegauge::prep::Operation::{Chase, Clean, Ream, Refer};

use super::{CUTS, Case, hold};

#[test]
fn threaded() {
    hold(
        "threaded_shells",
        &[
            Case(
                "hands swapped",
                &[Refer],
                &[Chase],
                "right-hand on the drive side is bsc back to front: nothing is cut; a chaser of the wrong hand destroys a thread",
                "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"right\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n[shell.non_drive]\nhand = \"left\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"",
            ),
            Case(
                "hands not looked at",
                &[],
                &[],
                "the hand of bsc is published by many, and pitch and bore confirm bsc",
                "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n[shell.non_drive]\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"",
            ),
            Case(
                "T47, hands not looked at",
                &[],
                &[],
                "the non-drive hand of t47 is remembered only: that side is looked at before a chaser goes in",
                "material = \"steel\"\n[shell]\nbelieved = \"t47\"\ncoating = \"painted\"\npitch = \"1 mm\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nminor = [\"45.95 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n[shell.non_drive]\nminor = [\"45.95 mm +/- 0.02 mm\"]\nstate = \"fouled\"",
            ),
            Case(
                "crossed on one side",
                &[Chase],
                &[],
                "clean first, then follow the old thread from its good end",
                "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"bare\"\npitch = \"24 tpi\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"crossed\"\n[shell.non_drive]\nhand = \"right\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"sound\"",
            ),
            Case(
                "loose on one side, torn out on the other",
                &[Refer],
                &[Chase],
                "a chaser restores no metal",
                "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"bare\"\npitch = \"24 tpi\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"loose\"\n[shell.non_drive]\nhand = \"right\"\nminor = [\"33.76 mm +/- 0.02 mm\"]\nstate = \"stripped\"",
            ),
            Case(
                "NOT GO went in",
                &[Refer],
                &[Chase],
                "further than two turns: worn or over-tapped",
                "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"bare\"\npitch = \"24 tpi\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"\ngo = \"passed\"\nnot_go = \"failed\"\n[shell.non_drive]\nhand = \"right\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"sound\"\ngo = \"passed\"\nnot_go = \"passed\"",
            ),
            Case(
                "too narrow for its window",
                &[],
                &[],
                "67.0 is under 67.2 (bsc_half_axle_68)",
                "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"bare\"\npitch = \"24 tpi\"\nwindow = \"bsc_half_axle_68\"\nwidth = [\"67.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"sound\"\n[shell.non_drive]\nhand = \"right\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"sound\"",
            ),
            Case(
                "the window of another shell",
                &[],
                &[],
                "italian_half_axle_70 is no window of a bsc shell",
                "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"bare\"\npitch = \"24 tpi\"\nwindow = \"italian_half_axle_70\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"sound\"\n[shell.non_drive]\nhand = \"right\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"sound\"",
            ),
        ],
    );
}

#[test]
fn pressed() {
    hold(
        "press_shells",
        &[
            Case(
                "PF30 with paint in it",
                &[Clean],
                &[],
                "paint comes out by hand, down to metal",
                "material = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"painted\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.90 mm +/- 0.005 mm\", \"90 deg: 45.90 mm +/- 0.005 mm\"]\npart = { name = \"cup\", outside = [\"46.05 mm +/- 0.005 mm\"] }",
            ),
            Case(
                "PF30 too small, bare",
                &[Ream],
                &[],
                "45.90 is under 45.95 (pf30_workshop)",
                "material = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.90 mm +/- 0.005 mm\", \"90 deg: 45.90 mm +/- 0.005 mm\"]",
            ),
            Case(
                "PF30 too large",
                &[Refer],
                &[Ream],
                "46.10 is over 46.00: cutting makes it larger",
                "material = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 46.10 mm +/- 0.005 mm\", \"90 deg: 46.10 mm +/- 0.005 mm\"]",
            ),
            Case(
                "PF30 of carbon, too small",
                &[Refer],
                CUTS,
                "carbon is not cut here",
                "material = \"carbon\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.90 mm +/- 0.005 mm\", \"90 deg: 45.90 mm +/- 0.005 mm\"]",
            ),
            Case(
                "PF30 not measured",
                &[],
                CUTS,
                "the bore is asked for",
                "material = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]",
            ),
            Case(
                "BB90: a slip fit by design",
                &[],
                CUTS,
                "no interference is no fault",
                "material = \"carbon\"\n[shell]\nbelieved = \"bb90\"\ncoating = \"bare\"\nwidth = [\"90.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 37.01 mm +/- 0.003 mm\", \"90 deg: 37.01 mm +/- 0.003 mm\"]\npart = { name = \"bearing\", outside = [\"37.0 mm +/- 0.002 mm\"] }",
            ),
            Case(
                "BB30 with faces",
                &[],
                &[],
                "rings in grooves locate the bearings: facing moves nothing but the shield gap",
                "material = \"aluminium\"\n[shell]\nbelieved = \"bb30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 41.97 mm +/- 0.003 mm\", \"90 deg: 41.97 mm +/- 0.003 mm\"]\n[shell.drive.face]\ncoating = \"bare\"\n[shell.non_drive.face]\ncoating = \"bare\"",
            ),
            Case(
                "a thread spoken of in a press shell",
                &[],
                &[],
                "pf30 has none",
                "material = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.98 mm +/- 0.003 mm\", \"90 deg: 45.98 mm +/- 0.003 mm\"]\n[shell.drive]\nhand = \"left\"",
            ),
            Case(
                "BBright, half widths",
                &[],
                &[],
                "34 and 45 mm from the middle plane by bbright_pf; wider on the drive side here",
                "material = \"aluminium\"\n[shell]\nbelieved = \"bbright_pf\"\ncoating = \"bare\"\nwidth = [\"79.0 mm +/- 0.02 mm\"]\nhalf_drive = \"45.0 mm +/- 0.2 mm\"\nhalf_non_drive = \"34.0 mm +/- 0.2 mm\"\nbore = [\"0 deg: 45.98 mm +/- 0.003 mm\", \"90 deg: 45.98 mm +/- 0.003 mm\"]",
            ),
            Case(
                "narrower after cutting than before",
                &[],
                &[],
                "the bore reads narrower: measured elsewhere, or not clean",
                "material = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.98 mm +/- 0.003 mm\", \"90 deg: 45.98 mm +/- 0.003 mm\"]\nafter = [\"0 deg: 45.90 mm +/- 0.003 mm\", \"90 deg: 45.90 mm +/- 0.003 mm\"]",
            ),
        ],
    );
}
