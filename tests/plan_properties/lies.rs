//! What is said and is not so: contradictions that a bench meets.

use crate::leaf::{Leaf, Sheet};
use crate::random::Dice;
use crate::rows::ROWS;

/// Says one thing that is not so; `false` where the sheet gives no occasion.
pub fn lie(truth: &Sheet, told: &mut Sheet, dice: &mut Dice) -> bool {
    for _ in 0..6 {
        let done = match dice.below(6) {
            0 => hands_swapped(told),
            1 => go_failed_on_sound(told),
            2 => twice(truth, told),
            3 => believed_another(told, dice),
            4 => another_hand(told, dice),
            _ => another_pitch(told, dice),
        };
        if done {
            return true;
        }
    }
    false
}

fn hands_swapped(told: &mut Sheet) -> bool {
    let [drive, other] =
        ["shell.drive.hand", "shell.non_drive.hand"].map(|p| told.word(p).map(str::to_owned));
    match (drive, other) {
        (Some(drive), Some(other)) if drive != other => {
            told.put("shell.drive.hand", Leaf::word(other));
            told.put("shell.non_drive.hand", Leaf::word(drive));
            true
        }
        _ => false,
    }
}

fn go_failed_on_sound(told: &mut Sheet) -> bool {
    let sound = told
        .0
        .iter()
        .find(|(path, leaf)| path.ends_with(".state") && **leaf == Leaf::word("sound"));
    let Some(path) = sound.map(|(path, _)| path.replace(".state", ".go")) else {
        return false;
    };
    told.put(path, Leaf::word("failed"));
    true
}

/// The same axle or hanger again, of another size.
fn twice(truth: &Sheet, told: &mut Sheet) -> bool {
    let next = (0..30)
        .take_while(|i| truth.speaks_of(&format!("thread[{i}]")))
        .count();
    for (place, end, mate) in [
        ("axle", "rear", "M12x1.75"),
        ("axle", "front", "M15x1.5"),
        ("hanger", "rear", "M9x1"),
    ] {
        if told.speaks_of(&format!("{place}.{end}"))
            && told.word(&format!("{place}.{end}.mate")) != Some(mate)
        {
            let path = format!("thread[{next}]");
            for (field, word) in [
                ("place", place),
                ("end", end),
                ("mate", mate),
                ("state", "fouled"),
                ("material", "steel"),
            ] {
                told.put(format!("{path}.{field}"), Leaf::word(word));
            }
            return true;
        }
    }
    false
}

fn believed_another(told: &mut Sheet, dice: &mut Dice) -> bool {
    if told.word("shell.believed").is_some() {
        let row = dice.of(&ROWS.threaded).code;
        told.put("shell.believed", Leaf::word(row));
        return true;
    }
    if told.word("seat_tube.believed").is_some() {
        told.put("seat_tube.believed", Leaf::word(dice.of(&ROWS.posts).0));
        return true;
    }
    false
}

fn another_hand(told: &mut Sheet, dice: &mut Dice) -> bool {
    let hands: Vec<String> = told
        .0
        .keys()
        .filter(|k| k.ends_with(".hand"))
        .cloned()
        .collect();
    if hands.is_empty() {
        return false;
    }
    let path = dice.of(&hands).clone();
    let other = if told.word(&path) == Some("left") {
        "right"
    } else {
        "left"
    };
    told.put(path, Leaf::word(other));
    true
}

fn another_pitch(told: &mut Sheet, dice: &mut Dice) -> bool {
    let pitches: Vec<String> = told
        .0
        .keys()
        .filter(|k| k.ends_with(".pitch"))
        .cloned()
        .collect();
    if pitches.is_empty() {
        return false;
    }
    let path = dice.of(&pitches).clone();
    let other = *dice.of(&["26 tpi", "1.25 mm", "1 mm", "0.8 mm", "24 tpi"]);
    told.put(path, Leaf::word(other));
    true
}
