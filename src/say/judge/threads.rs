//! Threads, gauges and bolts in words.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use crate::fact::Worded;
use crate::judge::{Contradiction, ThreadAsk, ThreadFact, ThreadSeen};
use crate::quantity::{in_mm, to_mm};
use crate::thread::Side;

/// `drive side, pitch`, or `pitch` where there are no sides.
fn on_side(on: Option<Side>, what: &'static str) -> Cow<'static, str> {
    on.map_or(Cow::Borrowed(what), |on| {
        format!("{}, {what}", on.words()).into()
    })
}

impl fmt::Display for ThreadFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Gauged {
                screw,
                go,
                not_go,
                plain_go,
                plain_not_go,
            } => return f.write_str(&gauges(*screw, [*go, *not_go, *plain_go, *plain_not_go])),
            Self::Seen { sign } => seen(*sign),
            Self::Contradiction { of } => contradiction(*of),
            Self::CrestBore { .. } => "bore over the crests",
            Self::Diameter {
                hole,
                part,
                apart,
                allowed,
                ..
            } => {
                return write!(
                    f,
                    "{} against {}: pitch diameters {} apart, allowance {}; equal-looking crests prove nothing",
                    in_mm(*hole),
                    in_mm(*part),
                    in_mm(*apart),
                    in_mm(*allowed)
                );
            }
            Self::Pitch {
                hole, part, a_turn, ..
            } => {
                return write!(
                    f,
                    "{hole} against {part}: {} a turn, {:.2} mm over ten",
                    in_mm(*a_turn),
                    to_mm(*a_turn) * 10.0
                );
            }
            Self::FlankAngle { .. } => "the flanks meet on a line, not on a face",
            Self::Hands { hole, part, .. } => {
                return write!(
                    f,
                    "{hole}-hand hole, {part}-hand part: it only starts by cutting its own way"
                );
            }
            Self::Alike { .. } => "same pitch, hand and form",
            Self::FormNotKnown { .. } => "the form of one thread is not known",
            Self::OneThreaded { .. } => "one has a thread here, the other has none",
            Self::HandsSwapped => {
                "both sides have the right thread of the wrong hand: swapped, so the shell sits back to front or the part is turned round; reject before assembly"
            }
            Self::Hybrid => {
                "a hybrid shell: each side needs its own cup; write both threads and both hands on the frame"
            }
            Self::DoNotForce => {
                "do not force it: a crossed thread does not come back, and is then spoilt, not fitting"
            }
            Self::NoHolePrinted { thread } => {
                return write!(
                    f,
                    "no hole size is published for {thread}: the mating part decides"
                );
            }
            Self::TooLittleThread => {
                "too little thread would be left: an insert or another size, by the frame maker or a qualified builder"
            }
            Self::EnlargeInSteps => {
                "in so small a hole the tap jams or breaks; cutting cannot be undone: enlarge in steps and measure"
            }
            Self::StandsOut { bolt } => return write!(f, "a {} bolt stands out", in_mm(*bolt)),
            Self::BoltFor {
                thickness,
                ideal,
                listed,
                listed_for,
            } => {
                write!(
                    f,
                    "a mount of {} takes a bolt of {}",
                    in_mm(*thickness),
                    in_mm(*ideal)
                )?;
                if let (Some(listed), Some(at)) = (listed, listed_for) {
                    write!(
                        f,
                        "; the nearest listed is {} for {}",
                        in_mm(*listed),
                        in_mm(*at)
                    )?;
                }
                return Ok(());
            }
            Self::BoltBottoms => {
                "too long a bolt bottoms in the blind hole and feels tight without clamping"
            }
            Self::BoltTorque => {
                "brakes: torque to the maker's figure; when in doubt, hand over to a qualified workshop"
            }
        })
    }
}

impl Worded for ThreadFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Gauged { .. } => "gauges",
            Self::Seen { sign } => sign_label(*sign),
            Self::Contradiction { .. } => "contradiction",
            Self::CrestBore { .. } => "bore over the crests",
            Self::Diameter { on, .. } => return on_side(*on, "diameter"),
            Self::Pitch { on, .. } => return on_side(*on, "pitch"),
            Self::FlankAngle { on } => return on_side(*on, "flank angle"),
            Self::Hands { on, .. } => return on_side(*on, "hand"),
            Self::Alike { on } | Self::FormNotKnown { on } => return on_side(*on, "thread"),
            Self::OneThreaded { on } => return on_side(Some(*on), "thread"),
            Self::HandsSwapped => "hands",
            Self::Hybrid => "shell",
            Self::DoNotForce => "force",
            Self::NoHolePrinted { .. } | Self::TooLittleThread | Self::EnlargeInSteps => "hole",
            Self::StandsOut { bolt } => {
                return format!("a {} bolt stands out", in_mm(*bolt)).into();
            }
            Self::BoltFor { .. } | Self::BoltBottoms | Self::BoltTorque => "bolt",
        })
    }
    fn size_count(&self) -> Option<usize> {
        match self {
            Self::CrestBore { count } => Some(*count),
            Self::StandsOut { .. } => Some(1),
            Self::Gauged { .. }
            | Self::Seen { .. }
            | Self::Contradiction { .. }
            | Self::Diameter { .. }
            | Self::Pitch { .. }
            | Self::FlankAngle { .. }
            | Self::Hands { .. }
            | Self::Alike { .. }
            | Self::FormNotKnown { .. }
            | Self::OneThreaded { .. }
            | Self::HandsSwapped
            | Self::Hybrid
            | Self::DoNotForce
            | Self::NoHolePrinted { .. }
            | Self::TooLittleThread
            | Self::EnlargeInSteps
            | Self::BoltFor { .. }
            | Self::BoltBottoms
            | Self::BoltTorque => None,
        }
    }
}

/// GO, NOT GO, plain GO and plain NOT GO: what each that was tried says of a hole or a screw.
fn gauges(screw: bool, passed: [Option<bool>; 4]) -> String {
    let of_hole = [
        [
            "GO passes: nothing stands in the way of a mating part",
            "GO stops: dirt, paint, burrs, a crossed start, or too little metal removed",
        ],
        [
            "NOT GO stops within two turns: the pitch diameter holds",
            "NOT GO enters: the pitch diameter is too large, worn or over-tapped",
        ],
        [
            "plain GO passes: the bore is large enough",
            "plain GO stops: the bore is too small, or coated",
        ],
        [
            "plain NOT GO stops: the threads are deep enough",
            "plain NOT GO enters: the bore is too large, so the threads are too shallow",
        ],
    ];
    let of_screw = [
        of_hole[0],
        [
            of_hole[1][0],
            "NOT GO goes on: the pitch diameter is too small, worn or overcut",
        ],
        [
            "plain GO passes: the crests are low enough",
            "plain GO stops: the crests are too high, or coated",
        ],
        [
            of_hole[3][0],
            "plain NOT GO goes on: the crests are gone, so the threads are too shallow",
        ],
    ];
    let words = if screw { of_screw } else { of_hole };
    let tried = words.iter().zip(passed);
    let said: Vec<&str> = tried
        .filter_map(|([good, bad], passed)| Some(if passed? { *good } else { *bad }))
        .collect();
    said.join("; ")
}

const fn seen(sign: ThreadSeen) -> &'static str {
    match sign {
        ThreadSeen::Sound => "looks sound",
        ThreadSeen::TakesPart => {
            "takes its part by hand: usable in practice, though no gauge has said so"
        }
        ThreadSeen::Fouled | ThreadSeen::Rough => {
            "no verdict before it is cleaned, followed with a chaser of the same pitch and hand, and gauged"
        }
        ThreadSeen::Jams => {
            "dirt, paint, a crossed start and a wrong pitch feel alike: no verdict before it is cleaned, chased and gauged"
        }
        ThreadSeen::Crossed => {
            "a part was forced in, so gauge before use: taking a part by hand after chasing proves no pitch diameter"
        }
        ThreadSeen::Loose => "loose with one part, which may be the small one: try another",
        ThreadSeen::LooseWithSeveral => {
            "loose with several known good parts: the thread is what they share, worn or over-tapped; the bore may still read right and proves nothing"
        }
        ThreadSeen::Stripped => "threads are torn out: no chaser brings their metal back",
        ThreadSeen::Uncut => "no thread is cut yet",
    }
}

const fn sign_label(sign: ThreadSeen) -> &'static str {
    match sign {
        ThreadSeen::Sound => "sound",
        ThreadSeen::TakesPart => "takes its part",
        ThreadSeen::Fouled => "fouled",
        ThreadSeen::Rough => "rough",
        ThreadSeen::Jams => "jams",
        ThreadSeen::Crossed => "crossed",
        ThreadSeen::Loose => "good part",
        ThreadSeen::LooseWithSeveral => "good parts",
        ThreadSeen::Stripped => "torn out",
        ThreadSeen::Uncut => "uncut",
    }
}

const fn contradiction(of: Contradiction) -> &'static str {
    match of {
        Contradiction::TooSmallAndTooLarge => {
            "GO stops and NOT GO runs in: a thread is not too small and too large at once; it is crossed, torn or of another pitch"
        }
        Contradiction::SoundButFails => "it is called sound, and a gauge fails in it",
        Contradiction::SoundButBoreOut => "it is called sound, and its bore is out",
        Contradiction::SoundButTorn => "it is called sound, and also torn or loose",
        Contradiction::TornButPasses => "all gauges pass a thread that is called torn",
        Contradiction::UncutButGauged => "no thread is cut yet, and a gauge was tried in it",
    }
}

impl fmt::Display for ThreadAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Grooves => "the grooves: pick out, wash, look",
            Self::PitchAndHand => "the pitch and the hand",
            Self::OtherGauges => {
                "what no gauge was tried on yet: the GO gauge, or the crest diameter with plain gauges"
            }
            Self::GaugesAgain { screw: false } => {
                "GO, NOT GO and bore again, once it is cleaned and chased with a chaser of the same pitch and hand"
            }
            Self::GaugesAgain { screw: true } => {
                "GO, NOT GO and crests again, once it is cleaned and chased with a die of the same pitch and hand"
            }
            Self::EngagementLeft { .. } => {
                "the flank engagement that is left, over wires or by the bore and the part's outside"
            }
            Self::NotGoOrWires => {
                "pitch diameter with the threaded NOT GO gauge at both ends, or over wires"
            }
            Self::PitchDiameter => "pitch diameter of the thread whose form is not known",
            Self::HoleOfTap => "the hole that the tap's maker names",
            Self::HoleTwice => "the hole in two directions, on bare metal",
            Self::ThicknessAndThread => {
                "thickness again after facing, and the depth of the thread in the caliper"
            }
        })
    }
}

impl Worded for ThreadAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Grooves => "hardened compound and paint feel like a crossed thread",
            Self::PitchAndHand => "a chaser of another pitch or hand ruins the thread",
            Self::OtherGauges => "a thread is shown to be right only when all four gauges agree",
            Self::GaugesAgain { .. } => "dirt and paint stop a gauge as too little cutting does",
            Self::EngagementLeft { screw: false } => {
                "chasing cannot bring metal back: it decides between an insert, retapping to the next pattern, and the frame builder"
            }
            Self::EngagementLeft { screw: true } => {
                "chasing cannot bring metal back: it decides whether the part is replaced"
            }
            Self::NotGoOrWires => {
                "it alone tells worn and over-tapped from sound; the bore does not"
            }
            Self::PitchDiameter => "nothing stands against it, nothing proves it",
            Self::HoleOfTap => "no limits are published for this thread",
            Self::HoleTwice => "too close to a limit for this tool, or read over paint",
            Self::ThicknessAndThread => {
                "facing changes the thickness, and engaged thread is less than what stands out"
            }
        })
    }
}
