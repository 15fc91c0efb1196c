//! Does this post fit this seat tube, and if not, which of them is wrong?
//!
//! `seatpost_fit --tube "27.40 +/- 0.02 mm" --post "27.00 +/- 0.02 mm" --nominal "27.2 mm" --clearance "0 mm to 0.1 mm"`.
//! No clearance for a clamped post is published; give the one you hold to. `--sizes "26.8 27.0 27.2"` names posts to be had,
//! in mm. Readings may say where: `27.25 +/- 0.02 mm @ 90 deg @ 40 mm`.

#[path = "support/members.rs"]
mod members;
mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::fit::{Caution, HoleMember, ShaftMember, Wanted, fit_between};
use framegauge::measure::Outcome;
use framegauge::{Error, ErrorKind, Length, in_mm, parse_length};
use support::{Answer, Words, answer};

fn run() -> Result<Answer, Error> {
    let words = Words::read(
        &["tube", "post", "nominal", "clearance", "sizes", "rule"],
        &[],
    )?;
    let nominal = words.named("nominal").map(parse_length).transpose()?;
    let tube: HoleMember =
        members::member(&words.all("tube"), nominal).map_err(|e| e.within("tube"))?;
    let post: ShaftMember =
        members::member(&words.all("post"), nominal).map_err(|e| e.within("post"))?;
    let window = words.named("clearance").ok_or_else(|| {
        Error::new(
            ErrorKind::Missing,
            "clearance",
            "",
            "no wanted clearance is given and no maker's applies to every post",
            "write e.g. `--clearance \"0 mm to 0.1 mm\"`",
        )
    })?;
    let window = members::limits(window).map_err(|e| e.within("clearance"))?;
    let sizes: Vec<Length> = words
        .named("sizes")
        .unwrap_or_default()
        .split_whitespace()
        .map(|size| parse_length(&format!("{size} mm")))
        .collect::<Result<_, _>>()?;
    let fit = fit_between(&tube, &post, members::rule(words.named("rule"))?)?;
    let held = fit.against(&Wanted::clearance(window, ""))?;
    let mut text = String::new();
    let gap = fit.tightest().value();
    let _ = if gap.value < 0.0 {
        writeln!(text, "The post is {} larger than the tube.", in_mm(-gap))
    } else {
        writeln!(
            text,
            "The post has {} of play on diameter at the tightest place.",
            in_mm(gap)
        )
    };
    let _ = writeln!(text, "Wanted {window}: {}.", held.outcome.words());
    if held.outcome == Outcome::NonconformityShown {
        let _ = writeln!(text, "Of the two, {}.", held.out.words());
        for (name, member) in [("tube", fit.hole()), ("post", fit.shaft())] {
            if let Some(off) = member.off_nominal {
                let side = if off.value < 0.0 { "smaller" } else { "larger" };
                let _ = writeln!(
                    text,
                    "The {name} is {} {side} than its nominal size.",
                    in_mm(off.abs())
                );
            }
        }
    }
    if let Some(wall) = held.cure.shim_wall() {
        let _ = writeln!(
            text,
            "A shim would need a wall of {wall}, half the difference."
        );
    }
    let next = held.cure.next_shaft(&sizes);
    if held.outcome == Outcome::NonconformityShown
        && let Some(size) = next
    {
        let _ = writeln!(text, "Of the sizes named, {} fits this tube.", in_mm(size));
    }
    let mut cautions = held.cautions.clone();
    cautions.push(Caution::MakerFirst);
    text.push_str(&members::cautions(&cautions));
    let report = serde_json::json!({ "fit": fit, "held": held, "next_size_mm": next.map(framegauge::settled_mm) });
    Ok(Answer::new(
        &report,
        text,
        held.outcome == Outcome::ConformityShown,
    ))
}

fn main() -> ExitCode {
    answer(run)
}
