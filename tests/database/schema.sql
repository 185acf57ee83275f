CREATE VIEW builds_as_delivered as
select jobs.job_id, jobs.number, jobs.customer_id, jobs.unit_id, jobs.revision_id, family_id,
  delivered_on, delivery.distance_amount, delivery.distance_unit, in_service_on, months
from jobs
join revisions on revisions.revision_id = jobs.revision_id
join deliveries as delivery on delivery_id =
  (select max(newest.delivery_id) from deliveries as newest where newest.job_id = jobs.job_id)
left join warranties on warranty_id =
  (select max(newest.warranty_id) from warranties as newest where newest.job_id = jobs.job_id)
where delivered_on is not null;

CREATE VIEW causes_as_known as
select * from comeback_causes
where certainty <> 'taken back' and not exists
  (select 1 from comeback_causes as newer
   where newer.comeback_id = comeback_causes.comeback_id and newer.cause = comeback_causes.cause
     and newer.pack_id is comeback_causes.pack_id and newer.comeback_cause_id > comeback_causes.comeback_cause_id);

CREATE VIEW comebacks_as_known as
select comebacks.job_id, built_job_id, logged_at, logged_by, card.*
from comebacks join comeback_cards as card on comeback_card_id =
  (select max(newest.comeback_card_id) from comeback_cards as newest
   where newest.comeback_id = comebacks.comeback_id);

CREATE VIEW findings_as_known as
select findings.job_id, finding_cards.*, decision
from findings
join finding_cards on finding_card_id =
  (select max(newest.finding_card_id) from finding_cards as newest where newest.finding_id = findings.finding_id)
join finding_decisions on finding_decision_id =
  (select max(newest.finding_decision_id) from finding_decisions as newest where newest.finding_id = findings.finding_id)
where is_withdrawn = 0;

CREATE VIEW gauges_as_known as
select gauges.kind, gauge_cards.*
from gauges join gauge_cards on gauge_card_id =
  (select max(newest.gauge_card_id) from gauge_cards as newest where newest.gauge_id = gauges.gauge_id);

CREATE VIEW pieces_as_known as
select pieces.*, height_nm, height_from, micrometer, standard_uncertainty_nm, measured_at, measured_by
from pieces join piece_heights on piece_height_id =
  (select max(newest.piece_height_id) from piece_heights as newest where newest.piece_id = pieces.piece_id);

CREATE VIEW plates_as_known as
select piece.*,
  case
    when returned.piece_id is not null or discarded.piece_id is not null or look.is_usable = 0 then 'do not use'
    when sits.mock_up_id is not null and without.mock_up_id is null then 'in a unit'
    when without.made_at > piece.measured_at then 'read again'
    else 'free'
  end as state,
  returned.piece_id is null and coalesce(discarded.was_mistyped, 0) = 0 as is_single,
  iif(without.mock_up_id is null, sits.mock_up_id, null) as mock_up_id,
  returned.can_id as returned_can_id,
  discarded.reason as discard_reason,
  look.piece_look_id
from pieces_as_known as piece
left join mock_ups as sits on sits.mock_up_id =
  (select max(mock_up_id) from mock_up_pieces where mock_up_pieces.piece_id = piece.piece_id)
left join mock_ups as without
  on without.job_id = sits.job_id and without.pack_id = sits.pack_id and without.number = sits.number + 1
left join discards as discarded on discarded.piece_id = piece.piece_id
left join can_returns as returned on returned.piece_id = piece.piece_id
left join piece_looks as look on look.piece_look_id =
  (select max(newest.piece_look_id) from piece_looks as newest where newest.piece_id = piece.piece_id);

CREATE TRIGGER approvals_no_delete before delete on approvals
begin select raise(abort, 'append-only: approvals'); end;

CREATE TRIGGER approvals_no_update before update on approvals
begin select raise(abort, 'append-only: approvals'); end;

CREATE TRIGGER batches_no_delete before delete on batches
begin select raise(abort, 'append-only: batches'); end;

CREATE TRIGGER batches_no_update before update on batches
begin select raise(abort, 'append-only: batches'); end;

CREATE TRIGGER calls_no_delete before delete on calls
begin select raise(abort, 'append-only: calls'); end;

CREATE TRIGGER calls_no_update before update on calls
begin select raise(abort, 'append-only: calls'); end;

CREATE TRIGGER calls_to_words after insert on calls
when new.job_id is not null and trim(new.with_whom || char(10) || new.said, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.with_whom || char(10) || new.said) > 0)
begin
  update job_words set words = words || char(10) || new.with_whom || char(10) || new.said where rowid = new.job_id;
end;

CREATE TRIGGER can_movements_never_below_zero before insert on can_movements
when new.change < 0
  and (select coalesce(sum(change), 0) from can_movements where can_id = new.can_id) + new.change < 0
begin select raise(abort, 'below zero: can_movements'); end;

CREATE TRIGGER can_movements_no_delete before delete on can_movements
begin select raise(abort, 'append-only: can_movements'); end;

CREATE TRIGGER can_movements_no_update before update on can_movements
begin select raise(abort, 'append-only: can_movements'); end;

CREATE TRIGGER can_returns_no_delete before delete on can_returns
begin select raise(abort, 'append-only: can_returns'); end;

CREATE TRIGGER can_returns_no_update before update on can_returns
begin select raise(abort, 'append-only: can_returns'); end;

CREATE TRIGGER checks_frozen_delete before delete on checks
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: checks'); end;

CREATE TRIGGER checks_frozen_update before update on checks
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: checks'); end;

CREATE TRIGGER clutch_figures_frozen_delete before delete on clutch_figures
when exists (select 1 from packs join jobs using (revision_id) where packs.pack_id = old.pack_id)
begin select raise(abort, 'frozen: clutch_figures'); end;

CREATE TRIGGER clutch_figures_frozen_update before update on clutch_figures
when exists (select 1 from packs join jobs using (revision_id) where packs.pack_id = old.pack_id)
begin select raise(abort, 'frozen: clutch_figures'); end;

CREATE TRIGGER clutch_loads_no_delete before delete on clutch_loads
begin select raise(abort, 'append-only: clutch_loads'); end;

CREATE TRIGGER clutch_loads_no_update before update on clutch_loads
begin select raise(abort, 'append-only: clutch_loads'); end;

CREATE TRIGGER comeback_cards_no_delete before delete on comeback_cards
begin select raise(abort, 'append-only: comeback_cards'); end;

CREATE TRIGGER comeback_cards_no_update before update on comeback_cards
begin select raise(abort, 'append-only: comeback_cards'); end;

CREATE TRIGGER comeback_cards_to_words after insert on comeback_cards
begin
  update job_words set words = words || char(10) || new.customer_says || char(10) || new.note
  where rowid = (select job_id from comebacks where comeback_id = new.comeback_id);
end;

CREATE TRIGGER comeback_causes_no_delete before delete on comeback_causes
begin select raise(abort, 'append-only: comeback_causes'); end;

CREATE TRIGGER comeback_causes_no_update before update on comeback_causes
begin select raise(abort, 'append-only: comeback_causes'); end;

CREATE TRIGGER comebacks_no_delete before delete on comebacks
begin select raise(abort, 'append-only: comebacks'); end;

CREATE TRIGGER comebacks_no_update before update on comebacks
begin select raise(abort, 'append-only: comebacks'); end;

CREATE TRIGGER core_settlements_no_delete before delete on core_settlements
begin select raise(abort, 'append-only: core_settlements'); end;

CREATE TRIGGER core_settlements_no_update before update on core_settlements
begin select raise(abort, 'append-only: core_settlements'); end;

CREATE TRIGGER cores_no_delete before delete on cores
begin select raise(abort, 'append-only: cores'); end;

CREATE TRIGGER cores_no_update before update on cores
begin select raise(abort, 'append-only: cores'); end;

CREATE TRIGGER deliveries_no_delete before delete on deliveries
begin select raise(abort, 'append-only: deliveries'); end;

CREATE TRIGGER deliveries_no_update before update on deliveries
begin select raise(abort, 'append-only: deliveries'); end;

CREATE TRIGGER deliveries_to_words after insert on deliveries
when new.delivered_to <> ''
begin
  update job_words set words = words || char(10) || new.delivered_to where rowid = new.job_id;
end;

CREATE TRIGGER deposits_never_below_zero before insert on deposits
when new.amount_cents < 0
  and (select coalesce(sum(amount_cents), 0) from deposits where job_id = new.job_id) + new.amount_cents < 0
begin select raise(abort, 'below zero: deposits'); end;

CREATE TRIGGER deposits_no_delete before delete on deposits
begin select raise(abort, 'append-only: deposits'); end;

CREATE TRIGGER deposits_no_update before update on deposits
begin select raise(abort, 'append-only: deposits'); end;

CREATE TRIGGER discards_no_delete before delete on discards
begin select raise(abort, 'append-only: discards'); end;

CREATE TRIGGER discards_no_update before update on discards
begin select raise(abort, 'append-only: discards'); end;

CREATE TRIGGER estimate_lines_no_delete before delete on estimate_lines
begin select raise(abort, 'append-only: estimate_lines'); end;

CREATE TRIGGER estimate_lines_no_update before update on estimate_lines
begin select raise(abort, 'append-only: estimate_lines'); end;

CREATE TRIGGER estimates_no_delete before delete on estimates
begin select raise(abort, 'append-only: estimates'); end;

CREATE TRIGGER estimates_no_update before update on estimates
begin select raise(abort, 'append-only: estimates'); end;

CREATE TRIGGER finding_cards_no_delete before delete on finding_cards
begin select raise(abort, 'append-only: finding_cards'); end;

CREATE TRIGGER finding_cards_no_update before update on finding_cards
begin select raise(abort, 'append-only: finding_cards'); end;

CREATE TRIGGER finding_cards_to_words after insert on finding_cards
when not exists (select 1 from job_words where rowid = (select job_id from findings where finding_id = new.finding_id) and instr(words, char(10) || new.part || char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.part || char(10) || new.note where rowid = (select job_id from findings where finding_id = new.finding_id);
end;

CREATE TRIGGER finding_decisions_no_delete before delete on finding_decisions
begin select raise(abort, 'append-only: finding_decisions'); end;

CREATE TRIGGER finding_decisions_no_update before update on finding_decisions
begin select raise(abort, 'append-only: finding_decisions'); end;

CREATE TRIGGER finding_lines_no_delete before delete on finding_lines
begin select raise(abort, 'append-only: finding_lines'); end;

CREATE TRIGGER finding_lines_no_update before update on finding_lines
begin select raise(abort, 'append-only: finding_lines'); end;

CREATE TRIGGER finding_photos_no_delete before delete on finding_photos
begin select raise(abort, 'append-only: finding_photos'); end;

CREATE TRIGGER finding_photos_no_update before update on finding_photos
begin select raise(abort, 'append-only: finding_photos'); end;

CREATE TRIGGER findings_no_delete before delete on findings
begin select raise(abort, 'append-only: findings'); end;

CREATE TRIGGER findings_no_update before update on findings
begin select raise(abort, 'append-only: findings'); end;

CREATE TRIGGER gauge_cards_no_delete before delete on gauge_cards
begin select raise(abort, 'append-only: gauge_cards'); end;

CREATE TRIGGER gauge_cards_no_update before update on gauge_cards
begin select raise(abort, 'append-only: gauge_cards'); end;

CREATE TRIGGER gauge_check_points_no_delete before delete on gauge_check_points
begin select raise(abort, 'append-only: gauge_check_points'); end;

CREATE TRIGGER gauge_check_points_no_update before update on gauge_check_points
begin select raise(abort, 'append-only: gauge_check_points'); end;

CREATE TRIGGER gauge_checks_no_delete before delete on gauge_checks
begin select raise(abort, 'append-only: gauge_checks'); end;

CREATE TRIGGER gauge_checks_no_update before update on gauge_checks
begin select raise(abort, 'append-only: gauge_checks'); end;

CREATE TRIGGER gauges_no_delete before delete on gauges
begin select raise(abort, 'append-only: gauges'); end;

CREATE TRIGGER gauges_no_update before update on gauges
begin select raise(abort, 'append-only: gauges'); end;

CREATE TRIGGER intakes_no_delete before delete on intakes
begin select raise(abort, 'append-only: intakes'); end;

CREATE TRIGGER intakes_no_update before update on intakes
begin select raise(abort, 'append-only: intakes'); end;

CREATE TRIGGER intakes_to_words after insert on intakes
when new.job_id is not null and trim(new.complaint || char(10) || new.codes || char(10) || new.pan || char(10) || new.installed_by || char(10) || new.vehicle_changes, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.complaint || char(10) || new.codes || char(10) || new.pan || char(10) || new.installed_by || char(10) || new.vehicle_changes) > 0)
begin
  update job_words set words = words || char(10) || new.complaint || char(10) || new.codes || char(10) || new.pan || char(10) || new.installed_by || char(10) || new.vehicle_changes where rowid = new.job_id;
end;

CREATE TRIGGER job_extent_parts_no_delete before delete on job_extent_parts
begin select raise(abort, 'append-only: job_extent_parts'); end;

CREATE TRIGGER job_extent_parts_no_update before update on job_extent_parts
begin select raise(abort, 'append-only: job_extent_parts'); end;

CREATE TRIGGER job_extent_stages_no_delete before delete on job_extent_stages
begin select raise(abort, 'append-only: job_extent_stages'); end;

CREATE TRIGGER job_extent_stages_no_update before update on job_extent_stages
begin select raise(abort, 'append-only: job_extent_stages'); end;

CREATE TRIGGER job_extents_no_delete before delete on job_extents
begin select raise(abort, 'append-only: job_extents'); end;

CREATE TRIGGER job_extents_no_update before update on job_extents
begin select raise(abort, 'append-only: job_extents'); end;

CREATE TRIGGER job_line_ends_no_delete before delete on job_line_ends
begin select raise(abort, 'append-only: job_line_ends'); end;

CREATE TRIGGER job_line_ends_no_update before update on job_line_ends
begin select raise(abort, 'append-only: job_line_ends'); end;

CREATE TRIGGER job_lines_no_delete before delete on job_lines
begin select raise(abort, 'append-only: job_lines'); end;

CREATE TRIGGER job_lines_no_update before update on job_lines
begin select raise(abort, 'append-only: job_lines'); end;

CREATE TRIGGER jobs_to_words after insert on jobs
begin
  insert into job_words (rowid, words)
  select new.job_id, concat_ws(char(10), new.number, new.case_tag, customers.name, customers.phone, families.name, serial, vehicle)
  from customers, units join families using (family_id)
  where customers.customer_id = new.customer_id and units.unit_id = new.unit_id;
end;

CREATE TRIGGER jobs_widened_no_delete before delete on jobs_widened
begin select raise(abort, 'append-only: jobs_widened'); end;

CREATE TRIGGER jobs_widened_no_update before update on jobs_widened
begin select raise(abort, 'append-only: jobs_widened'); end;

CREATE TRIGGER kit_batch_lines_no_delete before delete on kit_batch_lines
begin select raise(abort, 'append-only: kit_batch_lines'); end;

CREATE TRIGGER kit_batch_lines_no_update before update on kit_batch_lines
begin select raise(abort, 'append-only: kit_batch_lines'); end;

CREATE TRIGGER list_answers_no_delete before delete on list_answers
begin select raise(abort, 'append-only: list_answers'); end;

CREATE TRIGGER list_answers_no_update before update on list_answers
begin select raise(abort, 'append-only: list_answers'); end;

CREATE TRIGGER list_answers_to_words after insert on list_answers
when new.says in ('written', 'changed') or new.reason <> ''
begin
  update job_words
  set words = words || char(10) || concat_ws(char(10), iif(new.says in ('written', 'changed'), new.words, null), new.became, new.reason)
  where rowid = new.job_id;
end;

CREATE TRIGGER list_lines_frozen_delete before delete on list_lines
when exists (select 1 from lists join jobs using (revision_id) where lists.list_id = old.list_id)
begin select raise(abort, 'frozen: list_lines'); end;

CREATE TRIGGER list_lines_frozen_update before update on list_lines
when exists (select 1 from lists join jobs using (revision_id) where lists.list_id = old.list_id)
begin select raise(abort, 'frozen: list_lines'); end;

CREATE TRIGGER lists_frozen_delete before delete on lists
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: lists'); end;

CREATE TRIGGER lists_frozen_update before update on lists
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: lists'); end;

CREATE TRIGGER method_pairs_no_delete before delete on method_pairs
begin select raise(abort, 'append-only: method_pairs'); end;

CREATE TRIGGER method_pairs_no_update before update on method_pairs
begin select raise(abort, 'append-only: method_pairs'); end;

CREATE TRIGGER mock_up_pieces_no_delete before delete on mock_up_pieces
begin select raise(abort, 'append-only: mock_up_pieces'); end;

CREATE TRIGGER mock_up_pieces_no_update before update on mock_up_pieces
begin select raise(abort, 'append-only: mock_up_pieces'); end;

CREATE TRIGGER mock_up_pieces_to_words after insert on mock_up_pieces
when (select job_id from mock_ups where mock_up_id = new.mock_up_id) is not null and trim((select tag from pieces where piece_id = new.piece_id), char(10)) <> ''
  and not exists (select 1 from job_words where rowid = (select job_id from mock_ups where mock_up_id = new.mock_up_id) and instr(words, char(10) || (select tag from pieces where piece_id = new.piece_id)) > 0)
begin
  update job_words set words = words || char(10) || (select tag from pieces where piece_id = new.piece_id) where rowid = (select job_id from mock_ups where mock_up_id = new.mock_up_id);
end;

CREATE TRIGGER mock_ups_no_delete before delete on mock_ups
begin select raise(abort, 'append-only: mock_ups'); end;

CREATE TRIGGER mock_ups_no_update before update on mock_ups
begin select raise(abort, 'append-only: mock_ups'); end;

CREATE TRIGGER mock_ups_off_the_shelf after insert on mock_ups
begin delete from as_built where job_id = new.job_id; end;

CREATE TRIGGER mock_ups_to_words after insert on mock_ups
when new.job_id is not null and trim(new.note, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.note where rowid = new.job_id;
end;

CREATE TRIGGER money_terms_no_delete before delete on money_terms
begin select raise(abort, 'append-only: money_terms'); end;

CREATE TRIGGER money_terms_no_update before update on money_terms
begin select raise(abort, 'append-only: money_terms'); end;

CREATE TRIGGER movements_never_below_zero before insert on movements
when new.change < 0
  and (select coalesce(sum(change), 0) from movements where batch_id = new.batch_id) + new.change < 0
begin select raise(abort, 'below zero: movements'); end;

CREATE TRIGGER movements_no_delete before delete on movements
begin select raise(abort, 'append-only: movements'); end;

CREATE TRIGGER movements_no_update before update on movements
begin select raise(abort, 'append-only: movements'); end;

CREATE TRIGGER movements_return_what_was_pulled before insert on movements
when new.kind = 'return'
  and (select coalesce(sum(change), 0) from movements
    where job_id = new.job_id and batch_id = new.batch_id and kind in ('pull', 'return')) + new.change > 0
begin select raise(abort, 'more than was pulled: movements'); end;

CREATE TRIGGER movements_to_words after insert on movements
when new.job_id is not null and trim((select number || char(10) || mark from batches join parts using (part_id) where batch_id = new.batch_id), char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || (select number || char(10) || mark from batches join parts using (part_id) where batch_id = new.batch_id)) > 0)
begin
  update job_words set words = words || char(10) || (select number || char(10) || mark from batches join parts using (part_id) where batch_id = new.batch_id) where rowid = new.job_id;
end;

CREATE TRIGGER needs_passed_over_no_delete before delete on needs_passed_over
begin select raise(abort, 'append-only: needs_passed_over'); end;

CREATE TRIGGER needs_passed_over_no_update before update on needs_passed_over
begin select raise(abort, 'append-only: needs_passed_over'); end;

CREATE TRIGGER overrides_no_delete before delete on overrides
begin select raise(abort, 'append-only: overrides'); end;

CREATE TRIGGER overrides_no_update before update on overrides
begin select raise(abort, 'append-only: overrides'); end;

CREATE TRIGGER packs_frozen_delete before delete on packs
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: packs'); end;

CREATE TRIGGER packs_frozen_update before update on packs
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: packs'); end;

CREATE TRIGGER photos_no_delete before delete on photos
begin select raise(abort, 'append-only: photos'); end;

CREATE TRIGGER picture_points_frozen_delete before delete on picture_points
when exists (select 1 from pictures join jobs using (revision_id) where pictures.picture_id = old.picture_id)
begin select raise(abort, 'frozen: picture_points'); end;

CREATE TRIGGER picture_points_frozen_update before update on picture_points
when exists (select 1 from pictures join jobs using (revision_id) where pictures.picture_id = old.picture_id)
begin select raise(abort, 'frozen: picture_points'); end;

CREATE TRIGGER pictures_frozen_delete before delete on pictures
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: pictures'); end;

CREATE TRIGGER pictures_frozen_update before update on pictures
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: pictures'); end;

CREATE TRIGGER piece_height_points_no_delete before delete on piece_height_points
begin select raise(abort, 'append-only: piece_height_points'); end;

CREATE TRIGGER piece_height_points_no_update before update on piece_height_points
begin select raise(abort, 'append-only: piece_height_points'); end;

CREATE TRIGGER piece_heights_no_delete before delete on piece_heights
begin select raise(abort, 'append-only: piece_heights'); end;

CREATE TRIGGER piece_heights_no_update before update on piece_heights
begin select raise(abort, 'append-only: piece_heights'); end;

CREATE TRIGGER piece_looks_no_delete before delete on piece_looks
begin select raise(abort, 'append-only: piece_looks'); end;

CREATE TRIGGER piece_looks_no_update before update on piece_looks
begin select raise(abort, 'append-only: piece_looks'); end;

CREATE TRIGGER pieces_no_delete before delete on pieces
begin select raise(abort, 'append-only: pieces'); end;

CREATE TRIGGER pieces_no_update before update on pieces
begin select raise(abort, 'append-only: pieces'); end;

CREATE TRIGGER pieces_tag_once before insert on pieces
when new.tag <> '' and exists (select 1 from pieces
  where outline = new.outline and tag = new.tag and piece_id <> new.piece_id
  and piece_id not in (select piece_id from discards where was_mistyped))
begin select raise(abort, 'tag taken: pieces'); end;

CREATE TRIGGER promises_no_delete before delete on promises
begin select raise(abort, 'append-only: promises'); end;

CREATE TRIGGER promises_no_update before update on promises
begin select raise(abort, 'append-only: promises'); end;

CREATE TRIGGER reading_traces_no_delete before delete on reading_traces
begin select raise(abort, 'append-only: reading_traces'); end;

CREATE TRIGGER reading_traces_no_update before update on reading_traces
begin select raise(abort, 'append-only: reading_traces'); end;

CREATE TRIGGER readings_no_delete before delete on readings
begin select raise(abort, 'append-only: readings'); end;

CREATE TRIGGER readings_no_update before update on readings
begin select raise(abort, 'append-only: readings'); end;

CREATE TRIGGER readings_off_the_shelf after insert on readings
begin delete from as_built where job_id = (select job_id from takes where take_id = new.take_id); end;

CREATE TRIGGER revisions_frozen_delete before delete on revisions
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: revisions'); end;

CREATE TRIGGER revisions_frozen_update before update on revisions
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: revisions'); end;

CREATE TRIGGER setups_no_delete before delete on setups
begin select raise(abort, 'append-only: setups'); end;

CREATE TRIGGER setups_no_update before update on setups
begin select raise(abort, 'append-only: setups'); end;

CREATE TRIGGER sign_offs_no_delete before delete on sign_offs
begin select raise(abort, 'append-only: sign_offs'); end;

CREATE TRIGGER sign_offs_no_update before update on sign_offs
begin select raise(abort, 'append-only: sign_offs'); end;

CREATE TRIGGER sign_offs_to_words after insert on sign_offs
when new.job_id is not null and trim(new.note, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.note where rowid = new.job_id;
end;

CREATE TRIGGER spot_notes_no_delete before delete on spot_notes
begin select raise(abort, 'append-only: spot_notes'); end;

CREATE TRIGGER spot_notes_no_update before update on spot_notes
begin select raise(abort, 'append-only: spot_notes'); end;

CREATE TRIGGER spot_notes_off_the_shelf after insert on spot_notes
begin delete from as_built where job_id = (select job_id from takes where take_id = new.take_id); end;

CREATE TRIGGER stage_entries_move_the_job after insert on stage_entries
begin
  insert into jobs_in_stages values (new.job_id, new.stage_id, new.stage_entry_id)
  on conflict (job_id) do update set stage_id = excluded.stage_id, stage_entry_id = excluded.stage_entry_id;
end;

CREATE TRIGGER stage_entries_no_delete before delete on stage_entries
begin select raise(abort, 'append-only: stage_entries'); end;

CREATE TRIGGER stage_entries_no_update before update on stage_entries
begin select raise(abort, 'append-only: stage_entries'); end;

CREATE TRIGGER studies_no_delete before delete on studies
begin select raise(abort, 'append-only: studies'); end;

CREATE TRIGGER studies_no_update before update on studies
begin select raise(abort, 'append-only: studies'); end;

CREATE TRIGGER study_parts_no_delete before delete on study_parts
begin select raise(abort, 'append-only: study_parts'); end;

CREATE TRIGGER study_parts_no_update before update on study_parts
begin select raise(abort, 'append-only: study_parts'); end;

CREATE TRIGGER study_people_no_delete before delete on study_people
begin select raise(abort, 'append-only: study_people'); end;

CREATE TRIGGER study_people_no_update before update on study_people
begin select raise(abort, 'append-only: study_people'); end;

CREATE TRIGGER study_reads_no_delete before delete on study_reads
begin select raise(abort, 'append-only: study_reads'); end;

CREATE TRIGGER study_reads_no_update before update on study_reads
begin select raise(abort, 'append-only: study_reads'); end;

CREATE TRIGGER take_figures_no_delete before delete on take_figures
begin select raise(abort, 'append-only: take_figures'); end;

CREATE TRIGGER take_figures_no_update before update on take_figures
begin select raise(abort, 'append-only: take_figures'); end;

CREATE TRIGGER take_gauges_no_delete before delete on take_gauges
begin select raise(abort, 'append-only: take_gauges'); end;

CREATE TRIGGER take_gauges_no_update before update on take_gauges
begin select raise(abort, 'append-only: take_gauges'); end;

CREATE TRIGGER takes_no_delete before delete on takes
begin select raise(abort, 'append-only: takes'); end;

CREATE TRIGGER takes_no_update before update on takes
begin select raise(abort, 'append-only: takes'); end;

CREATE TRIGGER takes_off_the_shelf after insert on takes
begin delete from as_built where job_id = new.job_id; end;

CREATE TRIGGER takes_to_words after insert on takes
when new.job_id is not null and trim(new.note, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.note where rowid = new.job_id;
end;

CREATE TRIGGER units_called_no_delete before delete on units_called
begin select raise(abort, 'append-only: units_called'); end;

CREATE TRIGGER units_called_no_update before update on units_called
begin select raise(abort, 'append-only: units_called'); end;

CREATE TRIGGER units_to_call_no_delete before delete on units_to_call
begin select raise(abort, 'append-only: units_to_call'); end;

CREATE TRIGGER units_to_call_no_update before update on units_to_call
begin select raise(abort, 'append-only: units_to_call'); end;

CREATE TRIGGER warranties_no_delete before delete on warranties
begin select raise(abort, 'append-only: warranties'); end;

CREATE TRIGGER warranties_no_update before update on warranties
begin select raise(abort, 'append-only: warranties'); end;

CREATE TABLE approvals (
  approval_id integer primary key,
  estimate_id integer not null references estimates,
  approved_by text not null check (approved_by <> ''),
  how text not null check (how in ('in person', 'phone', 'message')),
  up_to_cents integer not null check (up_to_cents >= 0),
  approved_on text not null check (approved_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  note text not null,
  recorded_at text not null,
  recorded_by integer not null references people
) strict;

CREATE TABLE as_built (
  job_id integer primary key references jobs,
  reckoning integer not null,
  builder integer references people
) strict;

CREATE TABLE as_built_checks (
  job_id integer not null references as_built on delete cascade,
  check_id integer not null references checks,
  take_id integer not null references takes,
  amount real,
  lowest real,
  highest real,
  expanded real,
  verdict text not null check (verdict in ('in', 'tight', 'loose', 'too close to call', 'not judged')),
  outside_by real,
  primary key (job_id, check_id)
) strict, without rowid;

CREATE TABLE as_built_packs (
  job_id integer not null references as_built on delete cascade,
  pack_id integer not null references packs,
  mock_ups integer not null check (mock_ups >= 0),
  reused_plates integer not null check (reused_plates >= 0),
  primary key (job_id, pack_id)
) strict, without rowid;

CREATE TABLE batches (
  batch_id integer primary key,
  part_id integer not null references parts,
  kit_batch_id integer references batches,
  mark text not null,
  document text not null,
  received_on text not null check (received_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  unit_cost_cents integer check (unit_cost_cents >= 0),
  received_at text not null,
  received_by integer not null references people,
  check (mark <> '' or document <> '' or kit_batch_id is not null)
) strict;

CREATE TABLE calls (
  call_id integer primary key,
  job_id integer not null references jobs,
  direction text not null check (direction in ('they called', 'we called')),
  with_whom text not null check (with_whom <> ''),
  said text not null check (said <> ''),
  logged_at text not null,
  logged_by integer not null references people
) strict;

CREATE TABLE can_movements (
  can_movement_id integer primary key,
  can_id integer not null references cans,
  change integer not null,
  reason text not null check (reason <> ''),
  moved_at text not null,
  moved_by integer not null references people
, typed text not null default '', batch_id integer references batches, takes_back_id integer references can_movements) strict;

CREATE TABLE can_returns (
  piece_id integer primary key references pieces,
  can_id integer not null references cans,
  returned_at text not null,
  returned_by integer not null references people
) strict;

CREATE TABLE cans (
  can_id integer primary key,
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  outline text not null check (outline <> ''),
  height_nm integer not null check (height_nm > 0),
  unique (kind, outline, height_nm)
) strict;

CREATE TABLE check_shims (
  check_id integer not null references checks,
  height_nm integer not null check (height_nm > 0),
  primary key (check_id, height_nm)
) strict, without rowid;

CREATE TABLE check_variants (
  check_id integer not null references checks,
  position integer not null,
  name text not null check (name <> ''),
  nominal_amount integer not null,
  within_amount integer not null check (within_amount > 0),
  primary key (check_id, position)
) strict, without rowid;

CREATE TABLE checks (
  check_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  pack_id integer references packs,
  name text not null check (name <> ''),
  heading text not null check (heading <> ''),
  method text not null check (method in ('air', 'feeler', 'dial', 'direct', 'count', 'drop')),
  quantity text not null check (quantity in ('length', 'pressure', 'torque', 'volume', 'angle', 'count')),
  unit text not null,
  limit_kind text not null check (limit_kind in ('range', 'target', 'minimum', 'maximum', 'variants')),
  low_amount integer check ((low_amount is not null) = (limit_kind in ('range', 'target', 'minimum'))),
  target_amount integer check ((target_amount is not null) = (limit_kind = 'target')),
  high_amount integer check ((high_amount is not null) = (limit_kind in ('range', 'target', 'maximum'))),
  holds_for text not null check (holds_for in ('mean and tightest', 'mean', 'tightest spot', 'every spot')),
  wave_state text not null check (wave_state in ('none', 'in', 'flattened', 'left out')),
  spots integer not null check (spots between 1 and 12),
  source_note text not null,
  check (low_amount is null or high_amount is null or low_amount < high_amount),
  check (target_amount is null or target_amount between low_amount and high_amount),
  unique (revision_id, position),
  unique (revision_id, name)
) strict;

CREATE TABLE clutch_figures (
  pack_id integer primary key references packs,
  piston_outside_nm integer check (piston_outside_nm > 0),
  piston_inside_nm integer check (piston_inside_nm >= 0),
  springs_mn integer check (springs_mn >= 0),
  spring_rate_mn_m integer check (spring_rate_mn_m > 0),
  friction_outside_nm integer check (friction_outside_nm > 0),
  friction_inside_nm integer check (friction_inside_nm >= 0),
  friction_millionths integer check (friction_millionths > 0),
  apply_pressure_pa integer check (apply_pressure_pa > 0),
  gear_share_millionths integer check (gear_share_millionths > 0),
  flow_ul_min integer check (flow_ul_min > 0),
  inertia1_mg_m2 integer check (inertia1_mg_m2 > 0),
  inertia2_mg_m2 integer check (inertia2_mg_m2 > 0),
  speed1_rpm integer,
  speed2_rpm integer,
  steel_mass_mg integer check (steel_mass_mg > 0),
  check (piston_inside_nm < piston_outside_nm),
  check (friction_inside_nm < friction_outside_nm)
) strict;

CREATE TABLE clutch_loads (
  clutch_load_id integer primary key,
  job_id integer not null references jobs,
  engine_torque_mnm integer not null check (engine_torque_mnm > 0),
  converter_ratio_millionths integer not null check (converter_ratio_millionths > 0),
  reason text not null,
  stated_at text not null,
  stated_by integer not null references people
) strict;

CREATE TABLE comeback_cards (
  comeback_card_id integer primary key,
  comeback_id integer not null references comebacks,
  came_back_on text not null check (came_back_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  customer_says text not null,
  distance_amount integer check (distance_amount >= 0),
  distance_unit text check (distance_unit in ('miles', 'km', 'passes')),
  outcome text not null check (outcome in ('not known yet', 'ours', 'not our part', 'no fault found', 'logged by mistake')),
  covered text not null check (covered in ('not decided yet', 'in warranty', 'out of goodwill', 'not covered')),
  covered_note text not null,
  cost_cents integer check (cost_cents >= 0),
  note text not null,
  reason text not null,
  written_at text not null,
  written_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict;

CREATE TABLE comeback_causes (
  comeback_cause_id integer primary key,
  comeback_id integer not null references comebacks,
  cause text not null check (cause <> ''),
  pack_id integer references packs,
  certainty text not null check (certainty in ('known', 'suspected', 'not found', 'taken back')),
  note text not null,
  written_at text not null,
  written_by integer not null references people
) strict;

CREATE TABLE comebacks (
  comeback_id integer primary key,
  job_id integer not null references jobs,
  built_job_id integer not null references jobs,
  logged_at text not null,
  logged_by integer not null references people,
  check (job_id <> built_job_id)
) strict;

CREATE TABLE core_settlements (
  core_id integer primary key references cores,
  how text not null check (how in ('sent back', 'came back', 'charged', 'written off')),
  note text not null,
  settled_at text not null,
  settled_by integer not null references people
) strict;

CREATE TABLE cores (
  core_id integer primary key,
  direction text not null check (direction in ('to send back', 'due to us')),
  what text not null check (what <> ''),
  quantity integer not null check (quantity > 0),
  charge_cents integer check (charge_cents >= 0),
  due_on text check (due_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  batch_id integer references batches,
  job_id integer references jobs,
  opened_at text not null,
  opened_by integer not null references people
) strict;

CREATE TABLE customers (
  customer_id integer primary key,
  name text not null check (name <> ''),
  phone text not null,
  email text not null,
  note text not null
) strict;

CREATE TABLE deliveries (
  delivery_id integer primary key,
  job_id integer not null references jobs,
  delivered_to text not null check ((delivered_to = '') = (delivered_on is null)),
  delivered_on text check (delivered_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  distance_amount integer check (distance_amount >= 0),
  distance_unit text check (distance_unit in ('miles', 'km', 'passes')),
  handed_over_by integer not null references people,
  reason text not null check (reason <> '' or delivered_on is not null),
  recorded_at text not null,
  recorded_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict;

CREATE TABLE deposits (
  deposit_id integer primary key,
  job_id integer not null references jobs,
  amount_cents integer not null check (amount_cents <> 0),
  how text not null check (how in ('cash', 'card', 'check', 'transfer', 'other')),
  note text not null,
  received_at text not null,
  received_by integer not null references people
) strict;

CREATE TABLE discards (
  piece_id integer primary key references pieces,
  reason text not null check (reason <> ''),
  discarded_at text not null,
  discarded_by integer not null references people
, was_mistyped integer not null default 0 check (was_mistyped in (0, 1))) strict;

CREATE TABLE estimate_lines (
  estimate_id integer not null references estimates,
  position integer not null check (position > 0),
  job_line_id integer not null references job_lines,
  primary key (estimate_id, position),
  unique (estimate_id, job_line_id)
) strict, without rowid;

CREATE TABLE estimates (
  estimate_id integer primary key,
  job_id integer not null references jobs,
  number integer not null check (number > 0),
  what_was_found text not null,
  tax_label text not null,
  tax_per_hundred_thousand integer not null check (tax_per_hundred_thousand between 0 and 100000),
  taxable_cents integer not null,
  tax_cents integer not null,
  total_cents integer not null,
  deposited_cents integer not null check (deposited_cents >= 0),
  given_at text not null,
  given_by integer not null references people,
  unique (job_id, number)
) strict;

CREATE TABLE families (
  family_id integer primary key,
  name text not null unique check (name <> '')
) strict;

CREATE TABLE finding_cards (
  finding_card_id integer primary key,
  finding_id integer not null references findings,
  part text not null check (part <> ''),
  pack_id integer references packs,
  slot_id integer references slots,
  place text check (place in ('piston end', 'middle', 'ring end')),
  condition text not null check (condition in ('good', 'worn', 'burnt', 'glazed', 'flaked', 'warped', 'heat-spotted',
    'scored', 'cracked', 'loose', 'stuck', 'leaking', 'broken', 'missing')),
  thickness_nm integer check (thickness_nm > 0),
  thickness_typed text not null check ((thickness_typed = '') = (thickness_nm is null)),
  check_id integer references checks,
  note text not null,
  is_withdrawn integer not null check (is_withdrawn in (0, 1)),
  reason text not null check (is_withdrawn = 0 or reason <> ''),
  written_at text not null,
  written_by integer not null references people,
  check (pack_id is not null or (slot_id is null and place is null)),
  check (slot_id is null or place is not null)
) strict;

CREATE TABLE finding_decisions (
  finding_decision_id integer primary key,
  finding_id integer not null references findings,
  decision text not null check (decision in ('not decided yet', 'reuse', 'replace', 'machine')),
  note text not null,
  decided_at text not null,
  decided_by integer not null references people
) strict;

CREATE TABLE finding_lines (
  finding_id integer not null references findings,
  job_line_id integer not null references job_lines,
  linked_at text not null,
  linked_by integer not null references people,
  primary key (finding_id, job_line_id)
) strict, without rowid;

CREATE TABLE finding_photos (
  finding_photo_id integer primary key,
  finding_id integer not null references findings,
  photo_id integer not null references photos,
  is_pinned integer not null check (is_pinned in (0, 1)),
  pinned_at text not null,
  pinned_by integer not null references people
) strict;

CREATE TABLE findings (
  finding_id integer primary key,
  job_id integer not null references jobs
) strict;

CREATE TABLE gauge_cards (
  gauge_card_id integer primary key,
  gauge_id integer not null references gauges,
  tag text not null check (tag <> ''),
  unit text not null,
  resolution_amount integer not null check (resolution_amount > 0),
  permitted_error_amount integer check (permitted_error_amount > 0),
  stated_in text not null,
  off_square_degrees integer not null check (off_square_degrees between 0 and 60),
  serial text not null,
  interval_days integer check (interval_days > 0),
  is_retired integer not null check (is_retired in (0, 1)),
  written_at text not null,
  written_by integer not null references people
) strict;

CREATE TABLE gauge_check_points (
  gauge_check_id integer not null references gauge_checks,
  position integer not null check (position > 0),
  nominal_amount integer not null,
  read_amount integer not null,
  nominal_typed text not null check (nominal_typed <> ''),
  read_typed text not null check (read_typed <> ''),
  primary key (gauge_check_id, position)
) strict, without rowid;

CREATE TABLE gauge_checks (
  gauge_check_id integer primary key,
  gauge_id integer not null references gauges,
  against text not null check (against in ('blocks', 'leaves', 'ring', 'another gauge')),
  checked_on text not null check (checked_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  permitted_error_amount integer check (permitted_error_amount > 0),
  note text not null,
  supersedes_id integer unique references gauge_checks,
  reason text not null,
  checked_at text not null,
  checked_by integer not null references people,
  check ((supersedes_id is null) = (reason = ''))
) strict;

CREATE TABLE gauge_lines (
  gauge_line_id integer primary key,
  name text not null check (name <> ''),
  source text not null check (source in ('serial', 'practice')),
  path text,
  baud_rate integer check (baud_rate > 0),
  data_bits integer check (data_bits in (7, 8)),
  parity text check (parity in ('none', 'even', 'odd')),
  stop_bits integer check (stop_bits in (1, 2)),
  request text,
  practice text check (practice in ('steady', 'noisy', 'drifts', 'bounces', 'will not hold')),
  pattern text not null check (pattern <> ''),
  unit text not null check (unit in ('mm', 'in')),
  is_reversed integer not null check (is_reversed in (0, 1)),
  step_nm integer not null check (step_nm > 0),
  still_within_steps integer not null check (still_within_steps > 0),
  still_for_ms integer not null check (still_for_ms > 0),
  every_ms integer not null check (every_ms > 0),
  is_retired integer not null check (is_retired in (0, 1)),
  check ((source = 'serial') = (path is not null and baud_rate is not null and data_bits is not null
    and parity is not null and stop_bits is not null and request is not null)),
  check ((source = 'practice') = (practice is not null))
) strict;

CREATE TABLE gauges (
  gauge_id integer primary key,
  kind text not null check (kind in
    ('dial plunger', 'dial lever', 'micrometer', 'depth gauge', 'feeler set', 'pressure gauge', 'torque wrench')),
  added_at text not null,
  added_by integer not null references people
) strict;

CREATE TABLE intakes (
  intake_id integer primary key,
  job_id integer not null references jobs,
  complaint text not null,
  codes text not null,
  fluid_level text not null check (fluid_level in ('not looked at', 'none on the stick', 'low', 'full', 'over full')),
  fluid_colour text not null
    check (fluid_colour in ('not looked at', 'clear red', 'dark red', 'brown', 'black', 'milky')),
  fluid_smell text not null check (fluid_smell in ('not looked at', 'none', 'sharp', 'burnt')),
  pan text not null,
  installed_by text not null,
  vehicle_changes text not null,
  written_at text not null,
  written_by integer not null references people
) strict;

CREATE TABLE job_extent_parts (
  job_id integer not null references job_extents,
  kind text not null check (kind in ('check', 'list')),
  name text not null check (name <> ''),
  primary key (job_id, kind, name)
) strict, without rowid;

CREATE TABLE job_extent_stages (
  job_id integer not null references job_extents,
  stage_id integer not null references stages,
  primary key (job_id, stage_id)
) strict, without rowid;

CREATE TABLE job_extents (
  job_id integer primary key references jobs,
  name text not null check (name <> '')
) strict;

CREATE TABLE job_line_ends (
  job_line_id integer primary key references job_lines,
  replaced_by_id integer unique references job_lines check (replaced_by_id > job_line_id),
  reason text not null,
  ended_at text not null,
  ended_by integer not null references people
) strict;

CREATE TABLE job_lines (
  job_line_id integer primary key,
  job_id integer not null references jobs,
  kind text not null check (kind in ('labour', 'part', 'kit', 'sublet', 'core charge', 'other')),
  description text not null check (description <> ''),
  quantity_hundredths integer not null check (quantity_hundredths > 0),
  unit_price_cents integer not null check (unit_price_cents >= 0 or kind in ('core charge', 'other')),
  unit_cost_cents integer check (unit_cost_cents >= 0),
  is_taxable integer not null check (is_taxable in (0, 1)),
  batch_id integer references batches check (batch_id is null or kind in ('part', 'kit')),
  added_at text not null,
  added_by integer not null references people
) strict;

CREATE VIRTUAL TABLE job_words using fts5 (words, tokenize = 'trigram remove_diacritics 1');

CREATE TABLE 'job_words_config'(k PRIMARY KEY, v) WITHOUT ROWID;

CREATE TABLE 'job_words_content'(id INTEGER PRIMARY KEY, c0);

CREATE TABLE 'job_words_data'(id INTEGER PRIMARY KEY, block BLOB);

CREATE TABLE 'job_words_docsize'(id INTEGER PRIMARY KEY, sz BLOB);

CREATE TABLE 'job_words_idx'(segid, term, pgno, PRIMARY KEY(segid, term)) WITHOUT ROWID;

CREATE TABLE jobs (
  job_id integer primary key,
  number integer not null unique check (number > 0),
  customer_id integer not null references customers,
  unit_id integer not null references units,
  revision_id integer not null references revisions,
  case_tag text not null,
  distance_amount integer check (distance_amount >= 0),
  distance_unit text check (distance_unit in ('miles', 'km', 'passes')),
  opened_at text not null,
  opened_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict;

CREATE TABLE jobs_in_stages (
  job_id integer primary key references jobs,
  stage_id integer not null references stages,
  stage_entry_id integer not null references stage_entries
) strict;

CREATE TABLE jobs_widened (
  job_id integer primary key references job_extents,
  reason text not null check (reason <> ''),
  widened_at text not null,
  widened_by integer not null references people
) strict;

CREATE TABLE kit_batch_lines (
  batch_id integer not null references batches,
  part_id integer not null references parts,
  quantity integer not null check (quantity > 0),
  primary key (batch_id, part_id)
) strict, without rowid;

CREATE TABLE kit_lines (
  kit_id integer not null references parts,
  part_id integer not null references parts check (part_id <> kit_id),
  quantity integer not null check (quantity > 0),
  primary key (kit_id, part_id)
) strict, without rowid;

CREATE TABLE label_sizes (
  label_size_id integer primary key,
  name text not null unique check (name <> ''),
  width_um integer not null check (width_um between 10000 and 300000),
  height_um integer not null check (height_um between 10000 and 300000)
) strict;

CREATE TABLE line_gauges (
  gauge_line_id integer primary key references gauge_lines,
  gauge_id integer not null references gauges
) strict;

CREATE TABLE list_answers (
  list_answer_id integer primary key,
  job_id integer not null references jobs,
  list_line_id integer not null references list_lines,
  says text not null check (says in
    ('done', 'not so', 'does not apply', 'counted', 'chosen', 'written', 'changed', 'stalled')),
  words text not null check ((words <> '') = (says in ('chosen', 'written', 'changed'))),
  became text not null check ((became <> '') = (says = 'changed')),
  number integer check (number >= 0) check ((number is not null) = (says in ('counted', 'stalled'))),
  seconds integer check (seconds > 0) check ((seconds is not null) = (says = 'stalled')),
  reason text not null,
  answered_at text not null,
  answered_by integer not null references people
) strict;

CREATE TABLE list_line_options (
  list_line_id integer not null references list_lines,
  position integer not null,
  words text not null check (words <> ''),
  is_good integer not null check (is_good in (0, 1)),
  primary key (list_line_id, position),
  unique (list_line_id, words)
) strict, without rowid;

CREATE TABLE list_lines (
  list_line_id integer primary key,
  list_id integer not null references lists,
  position integer not null,
  words text not null check (words <> ''),
  asks text not null check (asks in ('tick', 'count', 'choice', 'words', 'change', 'stall')),
  expected_count integer check (expected_count >= 0) check ((expected_count is not null) = (asks = 'count')),
  low_rpm integer check ((low_rpm is not null) = (asks = 'stall')),
  high_rpm integer check ((high_rpm is not null) = (asks = 'stall')),
  longest_seconds integer check (longest_seconds > 0) check ((longest_seconds is not null) = (asks = 'stall')),
  check (low_rpm is null or low_rpm < high_rpm),
  unique (list_id, position),
  unique (list_id, words)
) strict;

CREATE TABLE lists (
  list_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  pack_id integer references packs,
  name text not null check (name <> ''),
  gone_through text not null check (gone_through in ('as found', 'teardown', 'build', 'final', 'delivery')),
  source_note text not null,
  unique (revision_id, position),
  unique (revision_id, name)
) strict;

CREATE TABLE method_pairs (
  method_pair_id integer primary key,
  what text not null check (what <> ''),
  first_method text not null check (first_method in ('air', 'feeler', 'dial', 'direct')),
  second_method text not null check (second_method in ('air', 'feeler', 'dial', 'direct')),
  first_nm integer not null,
  second_nm integer not null,
  first_typed text not null check (first_typed <> ''),
  second_typed text not null check (second_typed <> ''),
  supersedes_id integer unique references method_pairs,
  reason text not null,
  paired_at text not null,
  paired_by integer not null references people,
  check (first_method <> second_method),
  check ((supersedes_id is null) = (reason = ''))
) strict;

CREATE TABLE mock_up_pieces (
  mock_up_id integer not null references mock_ups,
  slot_id integer not null references slots,
  piece_id integer not null references pieces,
  primary key (mock_up_id, slot_id),
  unique (mock_up_id, piece_id)
) strict, without rowid;

CREATE TABLE mock_ups (
  mock_up_id integer primary key,
  job_id integer not null references jobs,
  pack_id integer not null references packs,
  number integer not null check (number >= 0),
  note text not null,
  predicted_mean_nm real,
  predicted_standard_deviation_nm real check ((predicted_standard_deviation_nm is null) = (predicted_mean_nm is null)),
  made_at text not null,
  made_by integer not null references people,
  unique (job_id, pack_id, number)
) strict;

CREATE TABLE money_terms (
  money_terms_id integer primary key,
  labour_rate_cents integer check (labour_rate_cents >= 0),
  tax_label text not null check (tax_label <> ''),
  tax_per_hundred_thousand integer not null check (tax_per_hundred_thousand between 0 and 100000),
  is_labour_taxable integer not null check (is_labour_taxable in (0, 1)),
  set_at text not null,
  set_by integer not null references people
) strict;

CREATE TABLE movements (
  movement_id integer primary key,
  batch_id integer not null references batches,
  kind text not null check (kind in ('receive', 'pull', 'return', 'scrap', 'count', 'open', 'sort')),
  change integer not null check (change <> 0),
  job_id integer references jobs check (job_id is not null or kind not in ('pull', 'return'))
    check (job_id is null or kind in ('pull', 'return', 'receive')),
  price_cents integer check (price_cents >= 0) check (price_cents is null or kind = 'pull'),
  reason text not null,
  moved_at text not null,
  moved_by integer not null references people,
  check (kind in ('count', 'sort') or (change > 0) = (kind in ('receive', 'return'))),
  check (kind not in ('scrap', 'count') or reason <> '')
) strict;

CREATE TABLE needs_passed_over (
  stage_entry_id integer not null references stage_entries,
  stage_id integer not null references stages,
  need text not null check (need <> ''),
  what text not null check (what <> ''),
  reason text not null check (reason <> ''),
  primary key (stage_entry_id, stage_id, need)
) strict, without rowid;

CREATE TABLE overrides (
  override_id integer primary key,
  job_id integer not null references jobs,
  check_id integer not null references checks,
  reason text not null check (reason <> ''),
  overridden_at text not null,
  overridden_by integer not null references people
) strict;

CREATE TABLE packs (
  pack_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  name text not null check (name <> ''),
  note text not null,
  unique (revision_id, position),
  unique (revision_id, name)
) strict;

CREATE TABLE part_families (
  part_id integer not null references parts,
  family_id integer not null references families,
  primary key (part_id, family_id)
) strict, without rowid;

CREATE TABLE parts (
  part_id integer primary key,
  number text not null collate nocase unique check (number <> ''),
  description text not null check (description <> ''),
  kind text not null check (kind in ('steel', 'friction', 'pressure plate', 'snap ring', 'seal', 'bushing', 'washer',
    'valve-body part', 'fluid', 'kit', 'other')),
  supplier text not null,
  unit_of_issue text not null check (unit_of_issue <> ''),
  bin text not null,
  cost_cents integer check (cost_cents >= 0),
  price_cents integer check (price_cents >= 0),
  core_charge_cents integer check (core_charge_cents > 0),
  reorder_point integer check (reorder_point >= 0),
  reorder_quantity integer check (reorder_quantity > 0),
  is_retired integer not null check (is_retired in (0, 1))
) strict;

CREATE TABLE people (
  person_id integer primary key,
  initials text not null unique check (length(initials) between 1 and 4),
  name text not null check (name <> ''),
  retired_at text
) strict;

CREATE TABLE photo_folder (
  photo_folder_id integer primary key check (photo_folder_id = 1),
  folder text not null
) strict;

CREATE TABLE photos (
  photo_id integer primary key,
  job_id integer not null references jobs,
  sha256 text not null check (length(sha256) = 64),
  small_sha256 text not null check (length(small_sha256) = 64),
  width integer not null check (width > 0),
  height integer not null check (height > 0),
  caption text not null,
  check_id integer references checks,
  is_in_report integer not null check (is_in_report in (0, 1)),
  folder_name text,
  added_at text not null,
  added_by integer not null references people,
  removed_at text
) strict;

CREATE TABLE picture_points (
  picture_id integer not null references pictures,
  position integer not null,
  label text not null check (label <> ''),
  note text not null,
  x_permille integer not null check (x_permille between 0 and 1000),
  y_permille integer not null check (y_permille between 0 and 1000),
  check_id integer references checks,
  list_line_id integer references list_lines,
  check (check_id is null or list_line_id is null),
  primary key (picture_id, position),
  unique (picture_id, label)
) strict, without rowid;

CREATE TABLE pictures (
  picture_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  title text not null check (title <> ''),
  sha256 text not null check (length(sha256) = 64),
  width integer not null check (width > 0),
  height integer not null check (height > 0),
  unique (revision_id, position),
  unique (revision_id, title)
) strict;

CREATE TABLE piece_height_points (
  piece_height_id integer not null references piece_heights,
  point integer not null check (point between 1 and 12),
  height_nm integer not null check (height_nm > 0),
  primary key (piece_height_id, point)
) strict, without rowid;

CREATE TABLE piece_heights (
  piece_height_id integer primary key,
  piece_id integer not null references pieces,
  height_nm integer not null check (height_nm > 0),
  height_from text not null check (height_from in ('measured', 'nominal', 'catalogue')),
  typed text not null,
  reason text not null,
  measured_at text not null,
  measured_by integer not null references people
, micrometer text not null default '', standard_uncertainty_nm integer check (standard_uncertainty_nm > 0)) strict;

CREATE TABLE piece_looks (
  piece_look_id integer primary key,
  piece_id integer not null references pieces,
  flat text not null check (flat in ('flat', 'not flat', 'not tried')),
  off_flat_nm integer check (off_flat_nm > 0) check (off_flat_nm is null or flat = 'not flat'),
  has_hot_spots integer not null check (has_hot_spots in (0, 1)),
  is_glazed integer not null check (is_glazed in (0, 1)),
  is_coned integer not null check (is_coned in (0, 1)),
  is_usable integer not null check (is_usable in (0, 1)),
  note text not null,
  looked_at text not null,
  looked_by integer not null references people
) strict;

CREATE TABLE pieces (
  piece_id integer primary key,
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  outline text not null,
  tag text not null,
  can_id integer references cans,
  added_at text not null,
  added_by integer not null references people
, batch_id integer references batches) strict;

CREATE TABLE placement_rule_places (
  placement_rule_id integer not null references placement_rules,
  place integer not null check (place > 0),
  primary key (placement_rule_id, place)
) strict, without rowid;

CREATE TABLE placement_rules (
  placement_rule_id integer primary key,
  pack_id integer not null references packs,
  position integer not null,
  rule text not null check (rule in ('thinnest-in', 'thickest-in', 'all-equal')),
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  unique (pack_id, position)
) strict;

CREATE TABLE promises (
  promise_id integer primary key,
  job_id integer not null references jobs,
  promised_on text not null check (promised_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  reason text not null,
  promised_at text not null,
  promised_by integer not null references people
) strict;

CREATE TABLE reading_traces (
  reading_id integer primary key references readings,
  line_name text not null check (line_name <> ''),
  is_practice integer not null check (is_practice in (0, 1)),
  samples blob not null check (length(samples) > 0),
  heard integer not null check (heard > 0),
  rest_nm integer,
  pressed_nm integer,
  air_nm integer
) strict;

CREATE TABLE readings (
  reading_id integer primary key,
  take_id integer not null references takes,
  spot integer not null check (spot between 1 and 12),
  method text not null check (method in ('air', 'feeler', 'dial', 'direct', 'count', 'drop')),
  typed text not null check (typed <> ''),
  push_amount integer,
  air_amount integer,
  is_zeroed_again integer not null default 0 check (is_zeroed_again in (0, 1)),
  is_air_only integer not null default 0 check (is_air_only in (0, 1)),
  waver_amount integer not null default 0 check (waver_amount >= 0),
  goes_amount integer,
  stops_amount integer,
  feel text not null default '' check (feel in ('', 'tight', 'easy')),
  amount integer,
  supersedes_id integer unique references readings,
  reason text not null default '',
  taken_at text not null,
  taken_by integer not null references people, first_amount integer
  check (first_amount is null or method in ('dial', 'direct', 'drop')), second_amount integer
  check ((second_amount is null) = (first_amount is null)
    and (second_amount is null or amount = abs(first_amount - second_amount))),
  check ((air_amount is not null) = (method = 'air')),
  check (method = 'air' or push_amount is null),
  check (method <> 'air' or push_amount is not null or is_air_only or is_zeroed_again),
  check ((goes_amount is not null and stops_amount is not null) = (method = 'feeler')),
  check (goes_amount is null or goes_amount < stops_amount),
  check ((amount is not null) = (method not in ('air', 'feeler'))),
  check ((supersedes_id is null) = (reason = ''))
) strict;

CREATE TABLE revisions (
  revision_id integer primary key,
  family_id integer not null references families,
  number integer not null check (number > 0),
  source_note text not null,
  saved_at text not null,
  saved_by integer not null references people,
  unique (family_id, number)
) strict;

CREATE TABLE settings (
  settings_id integer primary key check (settings_id = 1),
  is_demo integer not null check (is_demo in (0, 1)),
  shop_name text not null,
  length_unit text not null check (length_unit in ('thou', 'mm')),
  decimal_mark text not null check (decimal_mark in ('.', ',')),
  paper text not null check (paper in ('letter', 'A4')),
  warranty text not null,
  zero_return_limit_nm integer not null check (zero_return_limit_nm > 0),
  repeat_limit_nm integer not null check (repeat_limit_nm > 0),
  uneven_limit_nm integer not null check (uneven_limit_nm > 0),
  repeatability_nm integer not null check (repeatability_nm > 0),
  dial_repeatability_nm integer not null check (dial_repeatability_nm > 0),
  direct_repeatability_nm integer not null check (direct_repeatability_nm > 0),
  repeatability_degrees_of_freedom integer not null check (repeatability_degrees_of_freedom > 0),
  hand_force_half_width_nm integer not null check (hand_force_half_width_nm >= 0),
  base_on_pump_half_width_nm integer not null check (base_on_pump_half_width_nm >= 0),
  dial_resolution_nm integer not null check (dial_resolution_nm > 0),
  restack_nm integer not null check (restack_nm >= 0),
  micrometer_uncertainty_nm integer not null check (micrometer_uncertainty_nm > 0),
  decision_rule text not null check (decision_rule in ('simple', 'guarded'))
, warranty_months integer check (warranty_months > 0), warranty_distance integer check (warranty_distance > 0), warranty_distance_unit text not null default 'miles'
  check (warranty_distance_unit in ('miles', 'km')), warranty_passes integer check (warranty_passes > 0)) strict;

CREATE TABLE setups (
  setup_id integer primary key,
  dial_base text not null check (dial_base in ('drum', 'pump or lower drum')),
  is_piston_seated integer not null check (is_piston_seated in (0, 1)),
  air_pa integer check (air_pa > 0),
  port text not null,
  wave_state text not null check (wave_state in ('none', 'in', 'flattened', 'left out')),
  plates text not null check (plates in ('soaked', 'dry')),
  is_open_end_up integer not null check (is_open_end_up in (0, 1)),
  dial_type text not null check (dial_type in ('plunger', 'lever')),
  dial_face_counts integer not null check (dial_face_counts between 10 and 1000),
  mark text not null
) strict;

CREATE TABLE sign_offs (
  sign_off_id integer primary key,
  job_id integer not null references jobs,
  place text not null check (place in ('on stand', 'in vehicle')),
  note text not null,
  signed_at text not null,
  signed_by integer not null references people
) strict;

CREATE TABLE slot_catalogue (
  slot_id integer not null references slots,
  height_nm integer not null check (height_nm > 0),
  primary key (slot_id, height_nm)
) strict, without rowid;

CREATE TABLE slots (
  slot_id integer primary key,
  pack_id integer not null references packs,
  position integer not null,
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  nominal_nm integer check (nominal_nm > 0),
  is_adjuster integer not null check (is_adjuster in (0, 1)),
  outline text not null,
  facing text not null,
  unique (pack_id, position)
) strict;

CREATE TABLE small_job_parts (
  small_job_id integer not null references small_jobs on delete cascade,
  kind text not null check (kind in ('check', 'list')),
  name text not null check (name <> ''),
  primary key (small_job_id, kind, name)
) strict, without rowid;

CREATE TABLE small_job_stages (
  small_job_id integer not null references small_jobs on delete cascade,
  stage_id integer not null references stages,
  primary key (small_job_id, stage_id)
) strict, without rowid;

CREATE TABLE small_jobs (
  small_job_id integer primary key,
  family_id integer not null references families,
  name text not null check (name <> ''),
  saved_at text not null,
  saved_by integer not null references people,
  unique (family_id, name)
) strict;

CREATE TABLE spot_notes (
  spot_note_id integer primary key,
  take_id integer not null references takes,
  spot integer not null check (spot between 1 and 12),
  what text not null check (what in ('lost zero', 'not back to zero', 'will not hold air', 'plates re-clocked', 'enough')),
  noted_at text not null,
  noted_by integer not null references people
) strict;

CREATE TABLE stage_entries (
  stage_entry_id integer primary key,
  job_id integer not null references jobs,
  stage_id integer not null references stages,
  entered_at text not null,
  entered_by integer not null references people
) strict;

CREATE TABLE stage_needs (
  stage_id integer not null references stages,
  need text not null check (need <> ''),
  primary key (stage_id, need)
) strict, without rowid;

CREATE TABLE stages (
  stage_id integer primary key,
  position integer not null unique,
  name text not null unique,
  is_closed integer not null check (is_closed in (0, 1))
) strict;

CREATE TABLE studies (
  study_id integer primary key,
  name text not null check (name <> ''),
  method text not null check (method in ('air', 'dial', 'direct')),
  gauge_id integer references gauges,
  trials integer not null check (trials between 2 and 10),
  tolerance_nm integer check (tolerance_nm > 0),
  seed integer not null,
  started_at text not null,
  started_by integer not null references people
) strict;

CREATE TABLE study_parts (
  study_id integer not null references studies,
  position integer not null check (position > 0),
  name text not null check (name <> ''),
  primary key (study_id, position),
  unique (study_id, name)
) strict, without rowid;

CREATE TABLE study_people (
  study_id integer not null references studies,
  position integer not null check (position > 0),
  person_id integer not null references people,
  primary key (study_id, position),
  unique (study_id, person_id)
) strict, without rowid;

CREATE TABLE study_reads (
  study_read_id integer primary key,
  study_id integer not null references studies,
  place integer not null check (place > 0),
  typed text not null check (typed <> ''),
  amount_nm integer not null,
  supersedes_id integer unique references study_reads,
  reason text not null,
  taken_at text not null,
  taken_by integer not null references people,
  check ((supersedes_id is null) = (reason = ''))
) strict;

CREATE TABLE take_figures (
  take_id integer primary key references takes,
  repeatability_nm integer check (repeatability_nm >= 0),
  repeatability_degrees_of_freedom integer check (repeatability_degrees_of_freedom > 0),
  repeatability_from text check (repeatability_from in ('stated', 'repeats')),
  hand_force_half_width_nm integer not null check (hand_force_half_width_nm >= 0),
  base_on_pump_half_width_nm integer not null check (base_on_pump_half_width_nm >= 0),
  dial_resolution_nm integer not null check (dial_resolution_nm > 0),
  micrometer_uncertainty_nm integer not null check (micrometer_uncertainty_nm > 0),
  repeat_limit_nm integer not null check (repeat_limit_nm > 0),
  uneven_limit_nm integer not null check (uneven_limit_nm > 0),
  decision_rule text not null check (decision_rule in ('simple', 'guarded')),
  feeler_pairs integer check (feeler_pairs >= 0),
  feeler_bias_nm integer,
  feeler_bias_standard_uncertainty_nm integer check (feeler_bias_standard_uncertainty_nm >= 0),
  check ((repeatability_degrees_of_freedom is null) = (repeatability_nm is null)),
  check ((repeatability_from is null) = (repeatability_nm is null)),
  check ((feeler_bias_standard_uncertainty_nm is null) = (feeler_bias_nm is null)),
  check (feeler_bias_nm is null or feeler_pairs > 1)
) strict;

CREATE TABLE take_gauges (
  take_id integer primary key references takes,
  gauge_id integer not null references gauges,
  permitted_error_amount integer check (permitted_error_amount > 0),
  off_square_degrees integer not null check (off_square_degrees between 0 and 60)
) strict;

CREATE TABLE takes (
  take_id integer primary key,
  job_id integer not null references jobs,
  check_id integer not null references checks,
  phase text not null check (phase in ('as found', 'mock-up', 'final')),
  mode text not null check (mode in ('quick', 'final')),
  method text not null check (method in ('air', 'feeler', 'dial', 'direct', 'count', 'drop')),
  mock_up_id integer references mock_ups,
  setup_id integer references setups,
  note text not null,
  started_at text not null,
  started_by integer not null references people
) strict;

CREATE TABLE units (
  unit_id integer primary key,
  family_id integer not null references families,
  serial text not null,
  vehicle text not null,
  use text not null check (use in ('street', 'tow', 'competition'))
) strict;

CREATE TABLE units_called (
  unit_called_id integer primary key,
  unit_to_call_id integer not null references units_to_call,
  came_of_it text not null check (came_of_it in ('reached', 'not reached', 'comes in', 'looked at', 'taken off')),
  note text not null,
  called_at text not null,
  called_by integer not null references people
) strict;

CREATE TABLE units_to_call (
  unit_to_call_id integer primary key,
  job_id integer not null references jobs,
  shares text not null check (shares in ('batch', 'plate', 'gauge', 'finding', 'other')),
  what text not null check (what <> ''),
  what_to_check text not null,
  reason text not null check (reason <> ''),
  added_at text not null,
  added_by integer not null references people
) strict;

CREATE TABLE warranties (
  warranty_id integer primary key,
  job_id integer not null references jobs,
  in_service_on text check (in_service_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  months integer check (months > 0),
  distance_amount integer check (distance_amount > 0),
  distance_unit text check (distance_unit in ('miles', 'km')),
  passes integer check (passes > 0),
  reason text not null,
  set_at text not null,
  set_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict;

CREATE INDEX approvals_of_estimate on approvals (estimate_id);

CREATE INDEX as_built_checks_by_check on as_built_checks (check_id);

CREATE INDEX batches_of_kit_batch on batches (kit_batch_id);

CREATE INDEX batches_of_part on batches (part_id);

CREATE INDEX calls_of_job on calls (job_id);

CREATE INDEX can_movements_of_batch on can_movements (batch_id) where batch_id is not null;

CREATE INDEX can_movements_of_can on can_movements (can_id);

CREATE UNIQUE INDEX can_movements_taken_back on can_movements (takes_back_id) where takes_back_id is not null;

CREATE INDEX clutch_loads_of_job on clutch_loads (job_id);

CREATE INDEX comeback_cards_of_comeback on comeback_cards (comeback_id);

CREATE INDEX comeback_causes_of_comeback on comeback_causes (comeback_id);

CREATE INDEX comebacks_by_job on comebacks (job_id);

CREATE INDEX comebacks_of_build on comebacks (built_job_id);

CREATE INDEX cores_of_job on cores (job_id);

CREATE INDEX deliveries_of_job on deliveries (job_id);

CREATE INDEX deposits_of_job on deposits (job_id, amount_cents);

CREATE INDEX estimate_lines_of_line on estimate_lines (job_line_id);

CREATE INDEX finding_cards_by_part on finding_cards (part);

CREATE INDEX finding_cards_of_finding on finding_cards (finding_id);

CREATE INDEX finding_decisions_of_finding on finding_decisions (finding_id);

CREATE INDEX finding_photos_of_finding on finding_photos (finding_id);

CREATE INDEX findings_of_job on findings (job_id);

CREATE INDEX gauge_cards_of_gauge on gauge_cards (gauge_id);

CREATE INDEX gauge_checks_of_gauge on gauge_checks (gauge_id);

CREATE INDEX intakes_of_job on intakes (job_id);

CREATE INDEX job_lines_of_batch on job_lines (batch_id) where batch_id is not null;

CREATE INDEX job_lines_of_job on job_lines (job_id);

CREATE INDEX jobs_in_stages_by_stage on jobs_in_stages (stage_id);

CREATE INDEX jobs_of_customer on jobs (customer_id);

CREATE INDEX jobs_of_revision on jobs (revision_id);

CREATE INDEX jobs_of_unit on jobs (unit_id);

CREATE INDEX kit_batch_lines_of_part on kit_batch_lines (part_id);

CREATE INDEX kit_lines_of_part on kit_lines (part_id);

CREATE INDEX list_answers_of_job on list_answers (job_id, list_line_id);

CREATE INDEX mock_ups_of_piece on mock_up_pieces (piece_id);

CREATE INDEX movements_of_batch on movements (batch_id, change);

CREATE INDEX movements_of_job on movements (job_id, batch_id) where job_id is not null;

CREATE INDEX overrides_of_job on overrides (job_id);

CREATE INDEX part_families_of_family on part_families (family_id);

CREATE INDEX photos_from_folder on photos (folder_name) where folder_name is not null;

CREATE UNIQUE INDEX photos_once_a_job on photos (job_id, sha256) where removed_at is null;

CREATE INDEX piece_heights_of_piece on piece_heights (piece_id);

CREATE INDEX piece_looks_of_piece on piece_looks (piece_id);

CREATE INDEX pieces_by_tag on pieces (outline, tag) where tag <> '';

CREATE INDEX pieces_of_batch on pieces (batch_id);

CREATE INDEX pieces_of_can on pieces (can_id);

CREATE INDEX pieces_of_outline on pieces (outline, kind);

CREATE INDEX promises_of_job on promises (job_id);

CREATE INDEX readings_of_take on readings (take_id);

CREATE INDEX sign_offs_of_job on sign_offs (job_id);

CREATE INDEX spot_notes_of_take on spot_notes (take_id);

CREATE INDEX stage_entries_of_job on stage_entries (job_id);

CREATE UNIQUE INDEX study_reads_in_order on study_reads (study_id, place) where supersedes_id is null;

CREATE INDEX take_gauges_of_gauge on take_gauges (gauge_id);

CREATE INDEX takes_of_check on takes (check_id);

CREATE INDEX takes_of_job on takes (job_id, check_id);

CREATE INDEX takes_of_method on takes (method);

CREATE INDEX units_by_serial on units (serial collate nocase);

CREATE INDEX units_called_of_unit on units_called (unit_to_call_id);

CREATE INDEX units_of_family_by_serial on units (family_id, serial);

CREATE INDEX units_to_call_by_job on units_to_call (job_id);

CREATE INDEX warranties_of_job on warranties (job_id);
