# 記録する場所。
plate-place = 打席
plate-board = スコアボード
plate-field = グラウンド。打球を処理した野手か、落ちた所に触れてください
plate-undo = 戻す
plate-redo = やり直す
plate-players = 交代
plate-umpire = 審判
plate-cancel = 取り消し
plate-back = 戻る
plate-record = 記録
plate-more = その他
plate-adjust = 修正
plate-adjust-this = 修正：{ $headline }
plate-over-the-fence = 本塁打
plate-list = { $before }、{ $next }

# スコアボード。
plate-outs = アウト
plate-at-bat = 打者
plate-on-deck = 次打者
plate-pitching = 投手
plate-nobody = なし
plate-machine = マシン
plate-inning-top = { $inning }回表
plate-inning-bottom = { $inning }回裏
plate-middle-of = { $inning }回表終了：{ $score }
plate-end-of = { $inning }回終了：{ $score }
plate-outs-said = { $outs ->
    [0] 無死
    [1] 一死
    [2] 二死
   *[other] 三死
}
plate-count-said = { $balls }ボール、{ $strikes }ストライク
plate-score-said = { $visitors } { $away }、{ $home } { $at_home }
plate-order-place = { $place }番 { $name }
plate-pitch-count = { $pitches }球
plate-first-time-up = 第1打席
plate-today = { $at_bats }打数{ $hits }安打{ $walks ->
    [0] { "" }
   *[other] 、{ $walks }四球
}{ $runs ->
    [0] { "" }
   *[other] 、{ $runs }打点
}
plate-coming-up = 打順：{ $names }
plate-stands = { $outs ->
    [0] 無死
    [1] 一死
    [2] 二死
   *[other] 三死
}、{ $balls }ボール{ $strikes }ストライク

# 試合が行われていない間。
plate-not-begun = 試合はまだ始まっていません。
plate-to-the-card = メンバー表へ
plate-to-the-book = スコアブックへ
plate-play-ball = プレイボール
plate-no-player = この打順には選手がいません。
plate-empty-place-out = アウトを記録
plate-suspended = サスペンデッドゲームです。
plate-stopped = 試合は中断しています。
plate-over-played = 試合終了：{ $score }
plate-over-mercy = コールド：{ $score }
plate-over-declared = 宣告により終了：{ $score }
plate-over-called = 打ち切り：{ $score }

# 投球。
plate-pitches = 投球
plate-in-play-hint = 打った？ 処理した野手か、落ちた所に触れる。
plate-got-away = 振り逃げ
plate-ball = ボール
plate-called = 見逃し
plate-swinging = 空振り
plate-foul = ファウル
plate-foul-tip = ファウルチップ
plate-foul-bunt = バントファウル
plate-missed-bunt = バント空振り
plate-pitchout = ピッチアウト
plate-wide-on-purpose = 敬遠球
plate-automatic-ball = ボール
plate-automatic-strike = ストライク
plate-illegal-pitch = 反則投球
plate-hit-by-pitch = 死球
plate-catcher-hindered = 打撃妨害
plate-batter-hindered = 守備妨害
plate-intentional-walk = 申告敬遠
plate-small-strike = ストライク
plate-small-ball = ボール
plate-small-held = 捕球
plate-small-no-pitch = 投球なし
plate-small-takes-first = 一塁へ
plate-small-is-out = アウト
plate-said-ball = ボール
plate-said-called-strike = 見逃しストライク
plate-said-swinging-strike = 空振りストライク
plate-said-intentional-ball = 敬遠のボール
plate-said-automatic-ball = 投球なしのボール
plate-said-automatic-strike = 投球なしのストライク
plate-catcher-interference = 打撃妨害
plate-batter-interference = 打者の守備妨害
plate-then-walk = { $said }：四球
plate-then-intentional-walk = { $said }：故意四球
plate-then-struck-out = { $said }：三振
plate-then-side-out = { $said }。チェンジ

# 打球と選手の位置。
plate-off-the-bat = 打球の種類
plate-ground = ゴロ
plate-line = ライナー
plate-fly = フライ
plate-pop = 小フライ
plate-bunt = バント
plate-foul-ball = ファウル
plate-pitcher = 投手
plate-catcher = 捕手
plate-first = 一塁手
plate-second = 二塁手
plate-third = 三塁手
plate-short = 遊撃手
plate-left = 左翼手
plate-center = 中堅手
plate-right = 右翼手
plate-short-field = ショートフィルダー
plate-fielder-label = { $number } { $position }、{ $name }
plate-runner-label = { $base }走者：{ $name }
plate-batter-label = 打者：{ $name }
plate-runner-title = { $base }走者 { $name }
plate-batter-title = 打者 { $name }
plate-the-runner = 走者

# プレイの結果。
plate-what-happened = プレイの結果
plate-unassisted = { $number } 補殺なし
plate-headline-and-running = { $headline }：{ $running }
plate-ground-out = ゴロアウト { $by }
plate-bunt-out = バント、一塁アウト { $by }
plate-caught-line = { $fielder }（{ $number }）ライナー
plate-caught-pop = { $fielder }（{ $number }）小フライ
plate-caught-foul-pop = { $fielder }（{ $number }）ファウル小フライ
plate-caught-bunt = { $fielder }（{ $number }）バントフライ
plate-caught-fly = { $fielder }（{ $number }）フライ
plate-caught-foul-fly = { $fielder }（{ $number }）ファウルフライ
plate-infield-fly = { $caught }（インフィールドフライ）
plate-double-play = 併殺 { $by }
plate-caught-double-play = 捕球、併殺 { $by }
plate-triple-play = 三重殺 { $by }
plate-runner-out = { $runner } { $base }アウト { $by }、打者セーフ
plate-rundown = { $runner } 挟殺 { $by }
plate-all-safe = 野選、全員セーフ
plate-infield-single = 内野安打
plate-single = 安打
plate-double = 二塁打
plate-triple = 三塁打
plate-inside-the-park = ランニング本塁打
plate-home-run = 本塁打
plate-ground-rule-double = エンタイトル二塁打
plate-hit-and-out = { $hit }、{ $runner } { $base }アウト { $by }
plate-hit-and-error = { $hit }と{ $fielder }（{ $number }）の失策
plate-error-by-fielder = { $fielder }（{ $number }）の失策
plate-bad-throw-by-fielder = { $fielder }（{ $number }）の悪送球
plate-bad-throw-batter-to = { $fielder }（{ $number }）の悪送球、打者{ $base }へ
plate-throw-dropped-by = { $fielder }（{ $number }）が送球を落球
plate-fly-dropped-by-fielder = { $fielder }（{ $number }）がフライを落球
plate-foul-fly-dropped-by = { $fielder }（{ $number }）がファウルフライを落球
plate-batter-interfered = 打者アウト：守備妨害
plate-runner-hit = { $runner } 打球に触れてアウト
plate-steals = { $base }盗塁
plate-steals-home = 本盗
plate-steal-together = 重盗
plate-caught-stealing-at = { $base }盗塁刺 { $by }
plate-picked-off-at = { $base }けん制アウト { $by }
plate-out-advancing-at = { $base }走塁死 { $by }
plate-safe-on-bad-throw = { $base }セーフ：{ $fielder }（{ $number }）の悪送球
plate-safe-on-drop = { $base }セーフ：{ $fielder }（{ $number }）の落球
plate-wild-pitch = 暴投
plate-passed-ball = 捕逸
plate-balk = ボーク
plate-illegal-pitch-all = 反則投球：全走者進塁
plate-unopposed-to = 無関心で{ $base }へ
plate-wild-pitch-safe = 暴投、打者セーフ
plate-passed-ball-safe = 捕逸、打者セーフ
plate-catcher-throws-badly = 捕手（2）の悪送球、打者セーフ
plate-first-drops = 一塁手（3）が送球を落球、打者セーフ
plate-thrown-out = 一塁送球アウト { $by }
plate-forced-at = { $runner } { $base }封殺 { $by }
plate-way-out = { $runner } { $base }アウト
plate-way-scores = { $runner } 生還
plate-way-to = { $runner } { $base }へ
plate-way-stays = { $runner } そのまま

# 走者。
plate-on-the-pitch = その投球で
plate-between = 投球の間に
plate-caught-stealing-ask = 盗塁刺…
plate-picked-off-ask = けん制死…
plate-out-advancing-ask = 走塁死…
plate-chase-steal = { $runner } 盗塁：送球した野手、触球した野手は？
plate-chase-pickoff = { $runner } けん制：送球した野手、触球した野手は？
plate-chase-advance = { $runner } 進塁：送球した野手、触球した野手は？

# 修正。
plate-touch-a-runner = 走者に触れるか、引いて動かすと、到達した所を変えられます
plate-run-too-late = 得点より先に第3アウト
plate-safe = セーフ
plate-out = アウト
plate-stays = そのまま
plate-scores = 生還
plate-safe-at-first = 一塁セーフ
plate-safe-at-second = 二塁セーフ
plate-safe-at-third = 三塁セーフ
plate-out-at-first = 一塁アウト
plate-out-at-second = 二塁アウト
plate-out-at-third = 三塁アウト
plate-out-at-home = 本塁アウト
plate-because = 理由
plate-out-by = アウト { $by } ・ 野手に触れる
plate-touch-who-erred = 失策した野手に触れる
plate-another-error = 失策…
plate-draft-and-errors = { $moves }。{ $errors }
plate-misplay-by = { $fielder }の{ $misplay }
plate-misplay-fielding = 失策
plate-misplay-throwing = 悪送球
plate-misplay-muff = 落球
plate-misplay-dropped-fly = フライ落球
plate-misplay-dropped-foul = ファウルフライ落球
plate-misplay-obstruction = 走塁妨害
plate-misplay-interference = 妨害
plate-error-by = 失策 { $number }
plate-bad-throw-by = 悪送球 { $number }
plate-dropped-by = 落球 { $number }
plate-fly-dropped-by = フライ落球 { $number }
plate-obstruction-by = 走塁妨害 { $number }
plate-interference-by = 妨害 { $number }
plate-cause-play = 打球で
plate-cause-throw = 送球間に
plate-cause-choice = 野選
plate-cause-error = 失策で
plate-cause-obstruction = 走塁妨害
plate-cause-interference = 妨害
plate-cause-award = 安全進塁権
plate-cause-forced = 押し出され
plate-cause-steal = 盗塁
plate-cause-illegal-pitch = 反則投球
plate-cause-indifference = 無関心
plate-how-fly = 捕球
plate-how-force = 封殺
plate-how-tag = 触球
plate-how-strikeout = 三振
plate-how-appeal = アピール
plate-how-interference = 守備妨害
plate-how-hit-by-ball = 打球に当たる
plate-how-passing = 追い越し
plate-how-left-path = 走路を外れる
plate-how-out-of-turn = 打順の誤り
plate-how-other = その他の規則

# 選手交代。
plate-who-changes = 交代する野手、走者、打者に触れる
plate-drag-hint = 野手を別の野手へ引いて動かすと、守備位置が入れ替わります。
plate-fielding-side = 守備側
plate-batting-side = 攻撃側
plate-player-row = { $place }番 { $name } { $post }
plate-pinch-hitter-for = { $name }（{ $post }）の代打
plate-pinch-runner-for = { $name }（{ $post }）の代走
plate-takes-over-from = { $name }（{ $post }）と交代
plate-came-in = { $outgoing }に代わり{ $incoming }
plate-nobody-on-bench = 控え選手の登録がありません。
plate-bench-row = { $shirt }番 { $name }
plate-bench-row-was-in = { $row }（退いた選手）
plate-new-player = 登録にない選手
plate-number = 背番号
plate-name = 氏名
plate-come-in = 出場
plate-swap-hint = 他の野手に触れると、守備位置を入れ替えます。
plate-leaves = 退く。代わりはいない
plate-as-courtesy = 臨時代走
plate-bats-for-dh = これから打席に立つ。指名打者は退く
plate-joins = 打順の最後に加わる：{ $team }

# 審判。
plate-result-only = 投球を見ていない？ 結果だけ
plate-result-walk = 四球
plate-result-struck-out-swinging = 空振り三振
plate-result-struck-out-looking = 見逃し三振
plate-the-count = 審判の言うカウント
plate-out-of-turn = 別の打者が打席にいる
plate-appeal = アピール：打順の誤り
plate-place-runner = 規則により走者を置く
plate-the-game = 試合
plate-why = 理由（空欄でもよい）
plate-end-half = この回の攻撃を終える
plate-delay = 中断
plate-resume = 再開
plate-suspend = サスペンデッド
plate-call-game = 打ち切り：ここで終了
plate-final = 試合終了
plate-forfeit-to = 没収試合：{ $team }の勝ち
plate-protest = 提訴
plate-note = メモ

# 記録員への問い。
plate-later = 後で：スコアブックに残る
plate-yes = はい
plate-no = いいえ
plate-hit = 安打
plate-error = 失策

# 記録したことの読み上げ。
plate-undone = 最後の記録を取り消しました
plate-redone = 元に戻しました
plate-nothing-to-undo = 取り消す記録はありません。
plate-nothing-to-redo = やり直す記録はありません。
plate-recorded-in-play = インプレイ
plate-recorded-running = 塁上のプレイ
plate-recorded-unseen = 結果を記録しました。投球は未確認とします
plate-recorded-count = カウントを{ $balls }ボール{ $strikes }ストライクにしました
plate-recorded-change = 交代を記録しました
plate-recorded-player = { $name }を登録しました
plate-recorded-batter-up = 打者は{ $name }
plate-recorded-empty-place = アウト：この打順に選手がいません
plate-recorded-appeal = アピールを記録しました
plate-recorded-place-runner = { $name }を{ $base }に置きました
plate-recorded-end-half = この回の攻撃が終わりました
plate-recorded-status = 審判の宣告を記録しました
plate-recorded-protest = 提訴を状況とともに記録しました
plate-recorded-note = メモしました
plate-recorded-ruling = 判定を記録しました
plate-recorded = 記録しました

# 球種と球速。
plate-note-pitches = 球種と球速を記録
plate-notes = 最後の投球の球種と球速
plate-speed = 球速
plate-mph = mph
plate-kmh = km/h
plate-fastball = 直球
plate-curveball = カーブ
plate-slider = スライダー
plate-change-up = チェンジアップ
plate-knuckleball = ナックル
plate-drop = ドロップ
plate-rise = ライズ
plate-other-pitch = その他
plate-speed-said = { $speed } { $unit }
plate-noted = 記録：{ $what }
plate-noted-both = 記録：{ $kind }、{ $speed }
plate-noted-nothing = 投球から消しました
