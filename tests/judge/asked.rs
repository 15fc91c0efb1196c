//! Questions as the cases put them, in the order in which a mechanic tells them.

use framegauge::fit::{Feature, FitClass, RingClass, SizeClass, SizeReading, Wanted};
use framegauge::judge::{
    BoltLength, Coating, CupDepth, Felt, Fit, Gauging, HoleToTap, HubWidth, MemberOf,
    ParallelFaces, Passed, Ream, Shim, SpindleWidth, ThreadSeen, Verdict,
};
use framegauge::measure::{DecisionRule, Limits, Placed, Reading, Surface};
use framegauge::standard::{Hold, Joint, Sense, Shell, Tables};
use framegauge::{Error, Length};

/// A hole, by what is known of it.
pub struct HoleMember;
/// A shaft, by what is known of it.
pub struct ShaftMember;

macro_rules! member {
    ($($kind:ident),*) => {$(
        #[allow(dead_code, reason = "holes and shafts are told alike")]
        impl $kind {
            pub fn of_reading(reading: Reading) -> Result<MemberOf, Error> {
                Ok(MemberOf::read(reading))
            }
            pub fn of_limits(limits: Limits) -> Result<MemberOf, Error> {
                Ok(MemberOf::within(limits))
            }
            pub fn of_class(nominal: Length, class: FitClass) -> Result<MemberOf, Error> {
                Ok(MemberOf { class: Some(SizeClass::new(nominal, class)?), ..MemberOf::default() })
            }
            pub fn of_ring(nominal: Length, class: RingClass) -> Result<MemberOf, Error> {
                Ok(MemberOf { ring: Some(nominal), ring_class: Some(class), ..MemberOf::default() })
            }
            pub fn measured_only(sizes: &[SizeReading]) -> Result<MemberOf, Error> {
                Ok(MemberOf::placed(sizes.iter().map(|s| Placed::from(s.size())).collect::<Vec<_>>()))
            }
        }
    )*};
}
member!(HoleMember, ShaftMember);

pub trait MeasuredOnce: Sized {
    fn measured_once(self, reading: Reading) -> Result<Self, Error>;
}
impl MeasuredOnce for MemberOf {
    fn measured_once(mut self, reading: Reading) -> Result<Self, Error> {
        self.readings.push(reading.into());
        Ok(self)
    }
}

/// A fit, told piece by piece.
#[derive(Debug, Clone, Default)]
pub struct FitQuestion {
    asked: Fit,
    coated: [bool; 2],
}

impl FitQuestion {
    pub fn new(joint: Joint) -> Self {
        Self {
            asked: Fit {
                joint: Some(joint),
                ..Fit::default()
            },
            coated: [false; 2],
        }
    }
    pub fn of_shell(shell: &Shell) -> Result<Self, Error> {
        let asked = Fit {
            shell: Some(shell.code.to_string()),
            ..Fit::default()
        };
        // A shell without a bore is refused whatever else is told.
        asked.answer(Tables::ours())?;
        Ok(Self {
            asked,
            coated: [false; 2],
        })
    }
    pub fn hold(mut self, hold: Hold) -> Self {
        self.asked.hold = Some(hold);
        self
    }
    pub fn hole(mut self, hole: MemberOf) -> Self {
        self.asked.hole = hole;
        self
    }
    pub fn hole_measured(mut self, reading: Reading) -> Result<Self, Error> {
        self.asked.hole.readings.push(reading.into());
        Ok(self)
    }
    pub fn shaft(mut self, shaft: MemberOf) -> Self {
        self.asked.shaft = shaft;
        self
    }
    pub fn sold_as(mut self, size: Length) -> Self {
        self.asked.sold_as = Some(size);
        self
    }
    pub fn window(mut self, wanted: Wanted) -> Self {
        match wanted.sense {
            Sense::Clearance => self.asked.clearance.push(wanted.limits),
            Sense::Interference => self.asked.interference.push(wanted.limits),
        }
        self.asked.owner = Some(wanted.owner.into_owned());
        self
    }
    pub fn felt(mut self, felt: Felt) -> Self {
        self.asked.felt.push(felt);
        self
    }
    pub fn coated(mut self, member: Feature) -> Self {
        match member {
            Feature::Hole => self.coated[0] = true,
            Feature::Shaft => self.coated[1] = true,
        }
        self
    }
    pub fn rule(mut self, rule: DecisionRule) -> Self {
        self.asked.rule = Some(rule);
        self
    }
    pub fn judge(&self) -> Result<Verdict, Error> {
        let mut asked = self.asked.clone();
        let painted = |member: &mut MemberOf| {
            for placed in &mut member.readings {
                placed.surface = Surface::OverPaint;
            }
        };
        if self.coated[0] {
            painted(&mut asked.hole);
        }
        if self.coated[1] {
            painted(&mut asked.shaft);
        }
        asked.answer(Tables::ours())
    }
}

pub fn cup_depth(
    bore: &Reading,
    insertion: &Reading,
    rule: DecisionRule,
) -> Result<Verdict, Error> {
    let asked = CupDepth {
        bore_depth: vec![*bore],
        insertion: *insertion,
        room: None,
        rule: Some(rule),
    };
    asked.answer(Tables::ours())
}

pub fn spindle_for_width(shell: &Reading, made_for: Length) -> Result<Verdict, Error> {
    let asked = SpindleWidth {
        width: vec![*shell],
        made_for: Some(made_for),
        ..SpindleWidth::default()
    };
    asked.answer(Tables::ours())
}

pub fn flat_mount_bolt(thickness: &Reading, bolt: Option<Length>) -> Result<Verdict, Error> {
    let asked = BoltLength {
        thickness: *thickness,
        bolt,
        bolts: Vec::new(),
        engaged: None,
        rule: None,
    };
    asked.answer(Tables::ours())
}

pub fn shim(hole: &Reading, shaft: &Reading, sheet: Option<&Reading>) -> Result<Verdict, Error> {
    let asked = Shim {
        bore: vec![(*hole).into()],
        post: vec![(*shaft).into()],
        sheet: sheet.copied(),
        ..Shim::default()
    };
    asked.answer(Tables::ours())
}

pub fn over_coating(
    member: Feature,
    reading: Option<&Reading>,
    expected: Option<Length>,
) -> Result<Verdict, Error> {
    let asked = Coating {
        member,
        reading: reading.copied(),
        expected,
    };
    asked.answer(Tables::ours())
}

pub fn parallel_faces(parallelism: Option<&Reading>, wear: bool) -> Result<Verdict, Error> {
    let asked = ParallelFaces {
        parallelism: parallelism.copied(),
        wear_pattern: Some(wear),
        rule: None,
    };
    asked.answer(Tables::ours())
}

pub fn hub_width(pattern: &str, over_caps: Option<&Reading>) -> Result<Verdict, Error> {
    let asked = HubWidth {
        pattern: pattern.into(),
        over_caps: over_caps.copied(),
        rule: None,
    };
    asked.answer(Tables::ours())
}

pub fn reaming(outside: &Reading, bore: &Reading, to: Length) -> Result<Verdict, Error> {
    let asked = Ream {
        outside: Some(*outside),
        bore: vec![(*bore).into()],
        to,
        least: Vec::new(),
        rule: None,
    };
    asked.answer(Tables::ours())
}

pub fn hole_to_tap(
    thread: &framegauge::thread::ThreadSize,
    hole: &Reading,
) -> Result<Verdict, Error> {
    let asked = HoleToTap {
        thread: *thread,
        hole: vec![(*hole).into()],
        limits: None,
        rule: None,
    };
    asked.answer(Tables::ours())
}

/// What was seen of a thread without gauges.
#[derive(Clone, Copy, Default)]
pub struct ThreadSigns {
    pub loose_with_good_parts: u8,
    pub forced: bool,
    pub jams: bool,
    pub takes_part_by_hand: bool,
}

pub fn gauged_thread(
    member: framegauge::thread::Member,
    signs: &ThreadSigns,
    found: Option<&framegauge::thread::Gauging>,
) -> Result<Verdict, Error> {
    let passed = |p: Option<bool>| p.map(|p| if p { Passed::Passed } else { Passed::Failed });
    let found = found.copied().unwrap_or_default();
    let mut seen = Vec::new();
    match signs.loose_with_good_parts {
        0 => {}
        1 => seen.push(ThreadSeen::Loose),
        _ => seen.push(ThreadSeen::LooseWithSeveral),
    }
    for (is, sign) in [
        (signs.forced, ThreadSeen::Crossed),
        (signs.jams, ThreadSeen::Jams),
        (signs.takes_part_by_hand, ThreadSeen::TakesPart),
    ] {
        if is {
            seen.push(sign);
        }
    }
    let asked = Gauging {
        screw: Some(member == framegauge::thread::Member::External),
        go: passed(found.go_passes),
        not_go_turns: found.not_go_turns,
        plain_go: passed(found.plain_go_passes),
        plain_not_go: passed(found.plain_not_go_enters.map(|enters| !enters)),
        seen,
        ..Gauging::default()
    };
    asked.answer(Tables::ours())
}
